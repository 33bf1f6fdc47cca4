// What became of one place: its records, the change, the rate.
#pragma once

#include <string>
#include <vector>

#include "history/comparison.hpp"
#include "history/mending.hpp"
#include "history/year.hpp"

namespace tinworm::history {

struct ZoneHistory {
  std::vector<ZoneYear> years;  // marked by mark_mended
  std::vector<Mended> mended;
  bool one_gauge = true;  // in every survey
};

// By its name, which at least one survey has. The change is from the first survey of the history
// that ends with the latest one; a repair of the zone starts a new history.
Place place_of(const std::string& name, const ZoneHistory& zone, const rules::Rules& rules);

// Zone means: where no place of one name was read in two surveys of a history, the mean of all
// places read in the first that has two or more against that of the latest, by Welch's test over
// the places. None where either has fewer, or nothing was read in the latest.
std::optional<Place> zone_mean_of(const ZoneHistory& zone, const std::vector<Place>& places,
                                  const rules::Rules& rules);

// Every name in the zone: those of the latest survey in its order, then older ones.
std::vector<std::string> names_in(const std::vector<ZoneYear>& zone);

}  // namespace tinworm::history
