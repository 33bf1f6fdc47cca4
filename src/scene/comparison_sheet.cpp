#include "scene/comparison_sheet.hpp"

#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "scene/blank_page.hpp"
#include "scene/body_view.hpp"
#include "scene/callout.hpp"
#include "scene/change_words.hpp"
#include "scene/comparison_column.hpp"
#include "scene/drafting.hpp"
#include "scene/label.hpp"
#include "scene/naming.hpp"
#include "scene/showing_palette.hpp"
#include "scene/spot_mark.hpp"

namespace tinworm::scene {
namespace {

using history::Comparison;

std::map<int, Showing> showings_of(const Comparison& comparison) {
  std::map<int, Showing> found;
  for (const history::Zone& zone : comparison.zones)
    if (zone.number != 0) found[zone.number] = showing_of(zone, comparison.latest());
  return found;
}

std::pair<std::string, std::string> callout_words(const Comparison& comparison,
                                                  const history::Place& place, Units units) {
  std::string detail = since_words(comparison, place, units);
  for (const std::string& part :
       {change_words(place, units).find(place.why) == std::string::npos ? place.why : "",
        place.rate && place.rate->from != history::RateFrom::planning ? rate_words(place, units)
                                                                      : std::string()}) {
    if (part.empty()) continue;
    detail += (detail.empty() ? "" : "; ") + part;
  }
  return {capitalised(
              fmt::format("{}: {}", place_words(comparison, place), change_words(place, units))),
          detail};
}

Dress dress_of(const Comparison& comparison, const MarkedBody& body,
               const std::map<int, Showing>& zones, Units units, Shown& shown) {
  Dress dress;
  dress.zone = [&zones, &shown](const DrawnZone& drawn) -> Item {
    const Showing showing = zones.at(drawn.zone->number);
    shown.zones.insert(showing);
    return pale_fill(showing, drawn.shape);
  };
  dress.spot = [&body, &shown](const SpotMark& mark) -> Item {
    const Showing showing = showing_of(body.place(*mark.spot));
    shown.places.insert(showing);
    return strong_fill(showing, mark.shape);
  };
  dress.words = [&comparison, &body, units](const weighing::Spot& spot) {
    return callout_words(comparison, body.place(spot), units);
  };
  dress.details_elsewhere = true;  // in the list of changes
  return dress;
}

void name_places(Page& page, const Drafting& drafting) {
  for (const DrawnZone& drawn : drafting.zones) {
    const std::string name = fmt::format("zone-{:02}", drawn.zone->number);
    const bool known =
        std::ranges::any_of(page.places, [&](const Place& place) { return place.name == name; });
    if (!known)
      page.places.push_back({name, {drafting.sheet.frame.x_mm, bounds(drawn.shape).y_mm}});
  }
}

}  // namespace

bool draw_comparison_sheet(Page& page, const Sheet& sheet, const Comparison& comparison,
                           const MarkedBody& body, const ComparisonOptions& options,
                           const Measure& measure, const std::string& overflow_page) {
  DiagramOptions plain;
  plain.paper = options.paper;
  plain.units = options.units;
  const std::map<int, Showing> zones = showings_of(comparison);
  Shown shown;
  Drafting drafting{page, sheet, body.result, plain, measure, FreeSpace(sheet.drawing),
                    {},   {},    {},          {}};
  drafting.dress = dress_of(comparison, body, zones, options.units, shown);
  draw_body(drafting);
  draw_view_names(drafting);
  draw_spots(drafting);
  for (const SpotMark& mark : drafting.spots) drafting.space.cover(mark.shape);
  const auto called = draw_callouts(drafting);
  label_outside(drafting, label_inside(drafting));
  ring_ranks(drafting, called);
  if (!called.empty()) drafting.used.ranks = true;
  name_places(page, drafting);
  return draw_comparison_column(drafting, comparison, body, shown, overflow_page);
}

bool changed_on(SheetKind kind, const Comparison& comparison) {
  const weighing::Result& latest = comparison.latest();
  return std::ranges::any_of(comparison.zones, [&](const history::Zone& zone) {
    const auto plan = std::ranges::find(latest.body->zones, zone.number, &body::Zone::number);
    if (zone.number == 0 || plan == latest.body->zones.end()) return false;
    const bool drawn = std::ranges::any_of(plan->drawn, [&](const body::Drawing& drawing) {
      return drawing_on(kind, *plan, drawing.view) != nullptr;
    });
    const Showing showing = showing_of(zone, latest);
    return drawn && showing != Showing::nothing && showing != Showing::not_comparable &&
           showing != Showing::not_seen && showing != Showing::not_fitted;
  });
}

}  // namespace tinworm::scene
