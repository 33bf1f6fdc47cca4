#include "history/judged.hpp"

namespace tinworm::history {

Change change_of(const weighing::Span& lost_mm) {
  if (lost_mm.low > 0) return Change::worse;
  return lost_mm.high < 0 ? Change::not_comparable : Change::same;
}

Place place_in(const ZoneHistory& zone) {
  Place place;
  for (const ZoneYear& each : zone.years) {
    if (!each.facts) continue;
    place.zone = each.facts->number;
    place.own = each.facts->own;
  }
  place.to = zone.years.size() - 1;
  return place;
}

void take(Place& place, const Judged& judged) {
  place.change = judged.change;
  place.from = judged.from;
  place.why = judged.why;
  place.by_look = judged.by_look;
  place.lost_mm = judged.lost_mm;
  place.rate = judged.rate;
  if (!place.lost_mm) return;
  place.smallest_visible_mm = place.lost_mm->high - place.lost_mm->value;
  if (place.baseline_mm) place.lost_share = place.lost_mm->value / *place.baseline_mm;
}

}  // namespace tinworm::history
