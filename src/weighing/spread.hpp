// How far rust spreads over a zone: share of its length, rusted area.
#pragma once

#include <vector>

#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Sets share_of_length (f) of every spot of a zone: the share of its length along `runs` covered by
// spots no better than this one: the union of placed ones cut to the zone, plus the lengths of the
// others, a quarter of the zone for one without size (a hole nobody measured too, so that no find
// weighs less for having gone through), at most 1. 1 on or near a mount, for repairs
// and in own zones; 0 for stations, which have no part in others'.
void spread(std::vector<Spot>& spots, const ZoneFacts& zone, const rules::Rules& rules);

// Rusted share of the zone's area: union of the placed spots' rectangles, plus unplaced sizes, plus
// 1 % for a spot without size, at most 1. Stations and repairs don't count. Plan zones only.
double rusted_share(const std::vector<Spot>& spots, const body::Zone& zone,
                    const rules::Rules& rules);

}  // namespace tinworm::weighing
