#include "scene/showing.hpp"

#include <algorithm>

namespace tinworm::scene {
namespace {

using history::Change;
using weighing::Step;

Showing class_of(double lost_share) {
  if (lost_share <= 0.05) return Showing::lost_little;
  if (lost_share <= 0.15) return Showing::lost_some;
  return lost_share <= 0.30 ? Showing::lost_much : Showing::gone;
}

bool holed_since(const history::Place& place) {
  if (place.last().step != Step::holed || place.from >= place.records.size()) return false;
  return place.records[place.from].step != Step::holed;
}

Showing worse_showing(const history::Place& place) {
  if (holed_since(place)) return Showing::gone;
  // What a gauge told for certain; else a sign did.
  const bool measured = place.lost_mm && place.lost_mm->low > 0 && place.lost_share;
  return measured ? class_of(*place.lost_share) : Showing::by_sign;
}

Showing showing_of(Change change) {
  switch (change) {
    case Change::worse:
      return Showing::by_sign;
    case Change::same:
      return Showing::nothing;
    case Change::repaired:
      return Showing::repaired;
    case Change::newly_seen:
      return Showing::newly_seen;
    case Change::no_longer_visible:
      return Showing::no_longer_visible;
    case Change::not_comparable:
      break;
  }
  return Showing::not_comparable;
}

}  // namespace

Showing showing_of(const history::Place& place) {
  if (place.change == Change::worse) return worse_showing(place);
  const bool thicker =
      place.change == Change::not_comparable && place.lost_mm && place.lost_mm->high < 0;
  return thicker ? Showing::thicker : showing_of(place.change);
}

Showing showing_of(const history::Zone& zone, const weighing::Result& latest) {
  const weighing::Zone* now = zone.number != 0 ? latest.zone(zone.number) : nullptr;
  if (now != nullptr && !now->fitted) return Showing::not_fitted;
  const auto of_places = [&](Change change, Showing showing) {
    for (const history::Place& place : zone.places)
      if (place.change == change) showing = std::max(showing, showing_of(place));
    return showing;
  };
  if (zone.change == Change::worse) {
    const Showing worst = of_places(Change::worse, Showing::nothing);
    return worst == Showing::nothing ? Showing::by_sign : worst;
  }
  if (zone.change != Change::not_comparable) return showing_of(zone.change);
  if (std::ranges::all_of(zone.steps, [](Step step) { return step == Step::not_seen; }))
    return Showing::not_seen;
  const bool thicker = std::ranges::any_of(zone.places, [](const history::Place& place) {
    return showing_of(place) == Showing::thicker;
  });
  return thicker ? Showing::thicker : Showing::not_comparable;
}

std::string_view name_of(Showing showing) {
  switch (showing) {
    case Showing::thicker:
      return "reads thicker";
    case Showing::nothing:
      return "nothing shown";
    case Showing::lost_little:
      return "lost up to 5 %";
    case Showing::by_sign:
      return "worse by hand or eye";
    case Showing::lost_some:
      return "lost 5 to 15 %";
    case Showing::lost_much:
      return "lost 15 to 30 %";
    case Showing::gone:
      return "lost over 30 %";
    case Showing::repaired:
      return "repaired";
    case Showing::newly_seen:
      return "newly seen";
    case Showing::no_longer_visible:
      return "no longer visible";
    case Showing::not_comparable:
      return "not comparable";
    case Showing::not_seen:
      return "not seen";
    case Showing::not_fitted:
      return "not fitted";
  }
  return "";
}

std::string_view meaning_of(Showing showing) {
  switch (showing) {
    case Showing::thicker:
      return "metal doesn\u2019t grow, ask why";
    case Showing::nothing:
      return "clean, or no change beyond the error";
    case Showing::lost_little:
    case Showing::lost_some:
    case Showing::lost_much:
      return "of the sheet";
    case Showing::by_sign:
      return "no figure";
    case Showing::gone:
      return "of the sheet, or gone through";
    case Showing::repaired:
      return "a new history starts";
    case Showing::newly_seen:
      return "or noted now and not before";
    case Showing::no_longer_visible:
      return "seen once, not now";
    case Showing::not_comparable:
      return "no two looks to compare";
    case Showing::not_seen:
      return "in any survey, never taken for sound";
    case Showing::not_fitted:
      return "not on this car";
  }
  return "";
}

}  // namespace tinworm::scene
