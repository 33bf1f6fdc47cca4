#include "scene/marked_body.hpp"

#include <algorithm>

namespace tinworm::scene {
namespace {

using history::Change;

bool is_marked(const history::Place& place) {
  return place.change == Change::worse || showing_of(place) == Showing::thicker ||
         (place.change == Change::newly_seen && place.last().found);
}

bool shows_nothing(const history::Place& place) {
  return place.change == Change::same && place.lost_mm && !place.zone_mean;
}

// As the latest survey places it; without a place where it only is the mean of a zone.
weighing::Spot spot_of(const history::Place& place, const weighing::Zone& latest, int rank) {
  weighing::Spot spot;
  for (const weighing::Spot& each : latest.spots) {
    if (!place.zone_mean && !each.is_repair && each.name == place.name) spot = each;
  }
  spot.zone = place.zone;
  spot.name = place.name;
  spot.rank = rank;
  if (rank == 0) spot.metal.kind = weighing::SpanKind::interval;  // a station, drawn as measured
  return spot;
}

}  // namespace

MarkedBody marked_body(const history::Comparison& comparison) {
  MarkedBody body{comparison.latest(), {}};
  for (weighing::Zone& zone : body.result.zones) zone.spots.clear();
  for (const history::Place* place : comparison.by_change()) {
    if (!is_marked(*place) && !shows_nothing(*place)) continue;
    const auto zone = std::ranges::find_if(body.result.zones, [&](const weighing::Zone& each) {
      return each.number == place->zone && each.own == place->own;
    });
    const weighing::Zone* latest = comparison.latest().zone(place->zone);
    if (place->zone == 0 || zone == body.result.zones.end() || latest == nullptr) continue;
    int rank = 0;
    if (is_marked(*place)) {
      body.ranked.push_back(place);
      rank = static_cast<int>(body.ranked.size());
    }
    zone->spots.push_back(spot_of(*place, *latest, rank));
  }
  return body;
}

}  // namespace tinworm::scene
