// The mean of a zone's readings over the years, where its places bear no common name.
#pragma once

#include <optional>
#include <vector>

#include "history/comparison.hpp"
#include "history/zone_history.hpp"
#include "rules/rules.hpp"

namespace tinworm::history {

// Where no place of one name was read in two surveys of a history, the mean of all places read in
// the first that has two or more against that of the latest, by Welch's test over the places. None
// where either has fewer, or nothing was read in the latest. `places`: those of the zone by name.
std::optional<Place> zone_mean_of(const ZoneHistory& zone, const std::vector<Place>& places,
                                  const rules::Rules& rules);

}  // namespace tinworm::history
