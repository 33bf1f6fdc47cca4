// The column beside a comparison map: what changed most, the key, what wasn't seen in the latest
// survey, when to look again, the caution.
#pragma once

#include <set>
#include <string>

#include "scene/comparison.hpp"
#include "scene/drafting.hpp"
#include "scene/marked_body.hpp"
#include "scene/showing.hpp"

namespace tinworm::scene {

struct Shown {  // what the map uses, for the key
  std::set<Showing> zones, places;
};

// True if what wasn't seen, or the changed rules, found no room in full and need a page of their
// own, which will be called `overflow_page`.
bool draw_comparison_column(Drafting& drafting, const history::Comparison& comparison,
                            const MarkedBody& body, const Shown& shown,
                            const std::string& overflow_page);

}  // namespace tinworm::scene
