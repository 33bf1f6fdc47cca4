// A place that bears the name of one of its zone's stations stands there.
#pragma once

#include <algorithm>

#include "body/plan.hpp"
#include "survey/free_words.hpp"
#include "survey/survey.hpp"

namespace tinworm::survey {

// `Placed` is a Spot or a Repair. Capitals and hyphens make no other place: "Rear-End" is the
// station "rear end" from here on, so that it is found again over the years. Where it has a place
// of its own (`has_place`), only its name is the station's.
template <class Placed>
void stand_at_station(Placed& placed, bool has_place, const body::Zone& zone) {
  const auto words = words_in(placed.name);
  const auto station = std::ranges::find_if(
      zone.stations, [&](const body::Station& each) { return words_in(each.name) == words; });
  if (station == zone.stations.end()) return;
  placed.name = station->name;
  if (has_place) return;
  placed.at = {station->at.x_mm, station->at.y_mm, station->at.z_mm};
  placed.at_station = true;
}

}  // namespace tinworm::survey
