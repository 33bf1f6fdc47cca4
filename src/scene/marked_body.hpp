// The latest survey's body with the places that changed on it, as what draws surveys takes it.
#pragma once

#include <vector>

#include "history/comparison.hpp"
#include "scene/drafting.hpp"
#include "scene/showing.hpp"

namespace tinworm::scene {

struct MarkedBody {
  // The latest, its spots replaced: those that changed bear ranks, 1 the largest change; stations
  // that were measured again and show nothing bear none.
  weighing::Result result;
  std::vector<const history::Place*> ranked;  // by rank - 1

  const history::Place& place(const weighing::Spot& spot) const { return *ranked[spot.rank - 1]; }
};

// Marked are places that got worse, rust that was newly seen, and what reads thicker. Points into
// `comparison`, which must outlive it.
MarkedBody marked_body(const history::Comparison& comparison);

}  // namespace tinworm::scene
