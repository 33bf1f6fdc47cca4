#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "survey/free_words.hpp"
#include "weighing/asking.hpp"
#include "weighing/nearness.hpp"

namespace tinworm::weighing {
namespace {

void ask_where(Asking& asking) {
  Finds unplaced;
  for (const Find& find : asking.finds)
    if (find.weighed->near == Near::maybe && find.weighed->found) unplaced.push_back(&find);
  if (unplaced.empty()) return;
  asking.of_spot(
      *unplaced.front(), "place-not-recorded",
      fmt::format("where {}: {}? Name a station (`bodies {}` lists them), or give `at`.",
                  is_it(unplaced.size()), list(unplaced), asking.result.survey.body->name),
      fmt::format("It may lie within {:.0f} mm of a mounting, where metal is judged most "
                  "strictly.",
                  asking.rules.near_radius_mm));
}

void ask_how_large(Asking& asking) {
  Finds unsized;
  for (const Find& find : asking.finds)
    if (find.weighed->found && find.look->facts.load_bearing() && !find.recorded->size &&
        !find.recorded->hole)
      unsized.push_back(&find);
  if (unsized.empty()) return;
  asking.of_spot(*unsized.front(), "size-not-recorded",
                 fmt::format("how long and wide {}: {}?", is_it(unsized.size()), list(unsized)),
                 fmt::format("Until then {} of the zone's length is assumed to be rusted.",
                             percent(asking.rules.unsized_length_share)));
}

// A plan shows a body to within a tenth or so. Common practice.
constexpr double plan_slack = 1.1;

// As far as two points of the zone can lie apart.
double longest_mm(const body::Zone& zone) {
  double squares = 0;
  for (const body::Axis axis : {body::Axis::along, body::Axis::across, body::Axis::up})
    squares += std::pow(extent(zone.extent, axis).length(), 2);
  return std::sqrt(squares);
}

void ask_about_oversize(Asking& asking) {
  constexpr double mm2_in_m2 = 1e6;
  for (const Find& find : asking.finds) {
    const body::Zone* zone = find.look->facts.plan;
    const auto& size = find.recorded->size ? find.recorded->size : find.recorded->hole;
    if (!zone || !size) continue;
    const double area_m2 = size->along_mm * size->across_mm / mm2_in_m2;
    const bool fits = std::max(size->along_mm, size->across_mm) <= plan_slack * longest_mm(*zone) &&
                      area_m2 <= plan_slack * zone->area_m2;
    if (fits) continue;
    asking.of_spot(find, "size-over-part",
                   fmt::format("{}: is its size right? It is {:.0f}x{:.0f} mm, {:.2f} m²; the "
                               "whole zone has {:.2f} m² and is {:.0f} mm from end to end.",
                               title(find), size->along_mm, size->across_mm, area_m2, zone->area_m2,
                               longest_mm(*zone)),
                   "No more of a part can rust than there is; a slip of the pen or the unit makes "
                   "the damage and the work too large.");
  }
}

// From the zone's extent, along the coordinates that are known.
double outside_mm(const survey::Position& at, const body::Zone& zone) {
  double squares = 0;
  for (const body::Axis axis : {body::Axis::along, body::Axis::across, body::Axis::up})
    if (const auto x_mm = coordinate(at, axis))
      squares += std::pow(extent(zone.extent, axis).distance(*x_mm), 2);
  return std::sqrt(squares);
}

void ask_about_far(Asking& asking) {
  for (const Find& find : asking.finds) {
    if (!find.look->facts.plan) continue;
    const body::Zone& zone = *find.look->facts.plan;
    survey::Position at = find.recorded->at;
    const double far_mm = outside_mm(at, zone);
    if (far_mm <= asking.rules.ask_far_mm) continue;
    if (at.y_mm) at.y_mm = -*at.y_mm;
    const bool mirrored = outside_mm(at, zone) <= asking.rules.ask_far_mm;
    asking.of_spot(
        find, "far-from-zone",
        fmt::format("{}: is its place right? It lies {:.0f} mm outside the zone{}.", title(find),
                    far_mm,
                    mirrored ? "; y runs to the right, and is less than 0 on the left" : ""),
        "Its place decides which mounting is near, and where the mark stands.");
  }
}

// Whether free words name a side that the zone isn't on. "left of the drain" names none.
bool names_side(const std::string& name, std::string_view side) {
  const std::vector<std::string> words = survey::words_in(name);
  for (std::size_t i = 0; i < words.size(); ++i)
    if (words[i] == side && (i + 1 == words.size() || words[i + 1] != "of")) return true;
  return false;
}

void ask_about_side(Asking& asking) {
  for (const Find& find : asking.finds) {
    const body::Side side = find.look->facts.side;
    if (side == body::Side::centre || find.recorded->at_station) continue;
    const body::Side other = side == body::Side::left ? body::Side::right : body::Side::left;
    const std::string& name = find.recorded->name;
    if (!names_side(name, body::word(other)) || names_side(name, body::word(side))) continue;
    asking.of_spot(
        find, "other-side",
        fmt::format(
            "{}: on which side is it? The zone is on the {}{}.", title(find), body::word(side),
            find.look->facts.plan && find.look->facts.plan->pair()
                ? fmt::format(", {} on the {}", *find.look->facts.plan->pair(), body::word(other))
                : ""),
        "What is noted on the wrong side is looked for and mended on the wrong side.");
  }
}

std::string stations_of(const body::Zone& zone) {
  std::vector<std::string> names;
  for (const body::Station& station : zone.stations) names.push_back(station.name);
  return fmt::format("{}", fmt::join(names, ", "));
}

// A slip in a station's name, where no other spot has that name and its place doesn't speak against
// it.
void ask_about_names(Asking& asking) {
  for (const Find& find : asking.finds) {
    if (!find.look->facts.plan || find.recorded->at_station) continue;
    std::vector<std::string> stations;
    for (const body::Station& station : find.look->facts.plan->stations) {
      const auto& found = find.look->facts.entry->found;
      const bool taken = std::ranges::find(found, station.name, &survey::Spot::name) != found.end();
      const geometry::Box3 point = {{station.at.x_mm, station.at.x_mm},
                                    {station.at.y_mm, station.at.y_mm},
                                    {station.at.z_mm, station.at.z_mm}};
      body::Zone there;
      there.extent = point;
      if (!taken && outside_mm(find.recorded->at, there) <= asking.rules.ask_far_mm)
        stations.push_back(station.name);
    }
    const std::string meant = survey::meant_name(find.recorded->name, stations);
    if (meant.empty()) continue;
    asking.of_spot(find, "spot-name",
                   fmt::format("{}: is it the station \"{}\"? The stations of the zone are {} "
                               "(`bodies {}` lists all).",
                               title(find), meant, stations_of(*find.look->facts.plan),
                               asking.result.survey.body->name),
                   "Only a place of the same name is compared over the years, and a station has "
                   "its place on the map.");
  }
}

}  // namespace

void ask_about_places(Asking& asking) {
  ask_where(asking);
  ask_how_large(asking);
  ask_about_oversize(asking);
  ask_about_far(asking);
  ask_about_side(asking);
  ask_about_names(asking);
}

}  // namespace tinworm::weighing
