// How much of its zone rust takes up, along its length and over its area.
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Shares of its zone's length at the three ends of the metal left, that of the place and that of
// its hole alone.
struct Spread {
  Span place, hole;
};

// For each spot: the share of the zone's length in its `runs` direction covered by spots no better
// than this one, each end by the metal left at that end: the union of placed ones clipped to the
// zone, plus the extents of the others, a quarter for one without size; at most 1. 1 near a mount,
// for repairs and on zones without extent; 0 for stations. Sets share_of_length.
std::vector<Spread> spread(std::vector<Spot>& spots, const ZoneFacts& zone,
                           const rules::Rules& rules);

// The rusted share of the zone's area: union of placed spots' rectangles, plus unplaced sizes, plus
// 1 % of the zone for a spot without size, or its holes where they are more; at most 1. Stations
// and repairs don't count.
double rusted_share(const std::vector<Spot>& spots, const body::Zone& zone,
                    const rules::Rules& rules);

}  // namespace tinworm::weighing
