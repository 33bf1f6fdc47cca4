// What became of one place: its records, the change, the rate.
#pragma once

#include <string>
#include <vector>

#include "history/comparison.hpp"
#include "history/zone_history.hpp"
#include "rules/rules.hpp"

namespace tinworm::history {

// By its name, which at least one survey has. The change is from the first survey of the history
// that ends with the latest one; a repair of the zone starts a new history.
Place place_of(const std::string& name, const ZoneHistory& zone, const rules::Rules& rules);

// Every name in the zone: those of the latest survey in its order, then older ones.
std::vector<std::string> names_in(const std::vector<ZoneYear>& zone);

}  // namespace tinworm::history
