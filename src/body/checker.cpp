#include "body/checker.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/core.h>
#include <fmt/ranges.h>

#include "body/box_checker.hpp"
#include "geometry/area.hpp"
#include "geometry/space.hpp"

namespace tinworm::body {
namespace {

using geometry::Interval;
using yaml::Problem;
using yaml::Problems;

constexpr double body_spare_mm = 30;
constexpr double zone_spare_mm = 60;
constexpr double overlap_share = 0.02;
constexpr double pair_share = 0.01;

constexpr std::string_view letter(Axis axis) {
  return axis == Axis::along ? "X" : axis == Axis::across ? "Y" : "Z";
}

Interval room(const Plan& plan, Axis axis) {
  Interval room{0, plan.size.height_mm};
  if (axis == Axis::along) room = plan.x;
  if (axis == Axis::across) room = {-plan.size.width_mm / 2, plan.size.width_mm / 2};
  return {room.low - body_spare_mm, room.high + body_spare_mm};
}

const Interval& of(const geometry::Box3& box, Axis axis) {
  return axis == Axis::along ? box.x : axis == Axis::across ? box.y : box.z;
}

std::string span(Axis axis, const Interval& interval) {
  return fmt::format("{} {:.0f} to {:.0f}", letter(axis), interval.low, interval.high);
}

std::string span(const geometry::Box3& box) {
  return fmt::format("{}, {}, {}", span(Axis::along, box.x), span(Axis::across, box.y),
                     span(Axis::up, box.z));
}

std::string text(const geometry::Point3& at) {
  return fmt::format("{:.0f}, {:.0f}, {:.0f}", at.x_mm, at.y_mm, at.z_mm);
}

bool within(const Interval& inner, const Interval& outer) {
  return outer.low <= inner.low && inner.high <= outer.high;
}

geometry::Box3 room(const Plan& plan) {
  return {room(plan, Axis::along), room(plan, Axis::across), room(plan, Axis::up)};
}

bool inside_body(const Plan& plan, const geometry::Point3& at) {
  return geometry::distance_mm(at, room(plan)) == 0;
}

std::string sheet(const Drawing& drawing) {
  return fmt::format("in the {} view, {}", word(drawing.view), word(drawing.layer));
}

bool sound(const Drawing& drawing) {
  return drawing.outline.open.empty() && !geometry::invalid(drawing.outline);
}

void check_shape(const Zone& zone, const Drawing& drawing, Problems& problems) {
  const std::string which = fmt::format("zone {}'s outline {}", zone.number, sheet(drawing));
  if (!drawing.outline.open.empty()) {
    problems.push_back({drawing.place, which + " is open", "", "closed outlines",
                        "end every part of its path with Z"});
  } else if (const auto fault = geometry::invalid(drawing.outline)) {
    problems.push_back({drawing.place, which + " encloses no clear area",
                        fmt::format("{} at {:.0f},{:.0f}", fault->reason, fault->at.u, fault->at.v),
                        "rings that cross neither themselves nor each other",
                        "move the point or draw the parts one by one"});
  }
}

// Whether the drawing stays within the body.
bool check_place(const Plan& plan, const Zone& zone, const Drawing& drawing, Problems& problems) {
  if (drawing.outline.rings.empty() && drawing.outline.open.empty()) return true;
  const geometry::Rect around = geometry::bounds(drawing.outline);
  bool inside = true;
  for (const auto& [axis, extent] : {std::pair{first_axis(drawing.view), around.u},
                                     std::pair{second_axis(drawing.view), around.v}}) {
    if (within(extent, room(plan, axis))) continue;
    inside = false;
    problems.push_back(
        {drawing.place,
         fmt::format("zone {} lies outside the body {}", zone.number, sheet(drawing)),
         span(axis, extent), span(axis, room(plan, axis)), "move the outline, or correct size"});
  }
  return inside;
}

void check_extent(const Plan& plan, const Zone& zone, Problems& problems) {
  for (const Axis axis : {Axis::along, Axis::across, Axis::up}) {
    const Interval& extent = of(zone.extent, axis);
    if (within(extent, room(plan, axis))) continue;
    problems.push_back({zone.place, fmt::format("zone {}'s span leaves the body", zone.number),
                        span(axis, extent), span(axis, room(plan, axis)),
                        "correct its span, or size"});
  }
}

void check_drawings(const Plan& plan, const Zone& zone, Problems& problems) {
  if (zone.drawn.empty()) {
    problems.push_back({zone.place, fmt::format("zone {} is drawn nowhere", zone.number), "", "",
                        "give it an outline under drawn, in at least one view"});
  }
  bool inside = true;
  for (const Drawing& drawing : zone.drawn) {
    check_shape(zone, drawing, problems);
    inside = check_place(plan, zone, drawing, problems) && inside;
  }
  if (inside) check_extent(plan, zone, problems);
}

void check_pair(const Plan& plan, const Zone& zone, Problems& problems) {
  const auto number = zone.pair();
  if (!number) return;
  const Zone* pair = plan.zone(*number);
  if (pair == nullptr) {
    problems.push_back({zone.place, fmt::format("zone {} has no pair", zone.number), "", "",
                        fmt::format("add {}: {{mirror: {}}}, or number it 10 to 39 if it is single",
                                    *number, zone.number)});
  } else if (zone.number > *number) {  // said once, at the second of the two
    const double larger_m2 = std::max(zone.area_m2, pair->area_m2);
    if (std::abs(zone.area_m2 - pair->area_m2) <= pair_share * larger_m2 * (1 + 1e-9)) return;
    problems.push_back(
        {zone.place,
         fmt::format("zone {}'s area differs from that of its pair {}", zone.number, *number),
         fmt::format("{:.4g} and {:.4g} m2", zone.area_m2, pair->area_m2), "at most 1 % apart",
         "mirror one from the other, or correct an area"});
  }
}

void check_hides(const Plan& plan, const Zone& zone, Problems& problems) {
  for (const int hidden : zone.hides) {
    if (hidden == zone.number) {
      problems.push_back({zone.place, fmt::format("zone {} hides itself", zone.number), "", "",
                          "name the zones behind it"});
    } else if (plan.zone(hidden) == nullptr) {
      problems.push_back({zone.place,
                          fmt::format("zone {} hides a zone this body lacks", zone.number),
                          std::to_string(hidden), "", "correct the number, or add the zone"});
    }
  }
}

// Across the car's middle: at least a quarter of its width on either side. What lies to one side
// hides what is there.
bool lies_across(const Zone& zone) {
  const geometry::Interval& y = zone.extent.y;
  return zone.side() == Side::centre && std::min(-y.low, y.high) >= y.length() / 4;
}

void check_hides_both(const Plan& plan, const Zone& zone, Problems& problems) {
  if (!lies_across(zone)) return;
  for (const int hidden : zone.hides) {
    const auto twin = pair_of(hidden);
    if (!twin || plan.zone(hidden) == nullptr || plan.zone(*twin) == nullptr) continue;
    if (std::ranges::find(zone.hides, *twin) == zone.hides.end())
      problems.push_back({zone.place,
                          fmt::format("zone {} lies across the middle and hides zone {} alone",
                                      zone.number, hidden),
                          "", fmt::format("{} and {}", hidden, *twin),
                          fmt::format("add {} to its `hides`", *twin)});
  }
}

void check_joins(const Plan& plan, const Zone& zone, Problems& problems) {
  for (const int joined : zone.joins) {
    const Zone* other = plan.zone(joined);
    if (joined == zone.number) {
      problems.push_back({zone.place, fmt::format("zone {} joins itself", zone.number), "", "",
                          "name the zones it is welded or bolted to"});
    } else if (other == nullptr) {
      problems.push_back({zone.place,
                          fmt::format("zone {} joins a zone this body lacks", zone.number),
                          std::to_string(joined), "", "correct the number, or add the zone"});
    } else if (const double away_mm = geometry::distance_mm(zone.extent, other->extent);
               away_mm > zone_spare_mm) {
      problems.push_back({zone.place,
                          fmt::format("zone {} joins zone {}, which lies {:.0f} mm away",
                                      zone.number, joined, away_mm),
                          "", "at most 60 mm",
                          "correct the number, or the outlines and span of one of them"});
    }
  }
}

void check_opening(const Plan& plan, const Zone& zone, Problems& problems) {
  if (zone.opening.empty() || plan.opening(zone.opening) != nullptr) return;
  std::vector<std::string> names;
  for (const Opening& opening : plan.openings) names.push_back(opening.name);
  problems.push_back({zone.place,
                      fmt::format("zone {} is seen by an opening the plan lacks", zone.number),
                      zone.opening, fmt::format("{}", fmt::join(names, ", ")),
                      "add it under openings, or correct `open`"});
}

void check_condition(const Plan& plan, const std::optional<Condition>& when, Problems& problems) {
  if (!when) return;
  const Option* option = plan.option(when->option);
  const bool known = option != nullptr &&
                     std::ranges::find(option->choices, when->choice) != option->choices.end();
  if (known) return;
  problems.push_back({when->place, "`when` names an option or a choice that the plan lacks",
                      fmt::format("{}: {}", when->option, when->choice), "",
                      "add it under options, or correct it here"});
}

void check_stations(const Plan& plan, const Zone& zone, Problems& problems) {
  for (const Station& station : zone.stations) {
    const std::string which = fmt::format("station {} of zone {}", station.name, zone.number);
    if (!inside_body(plan, station.at)) {
      problems.push_back({station.place, which + " lies outside the body", text(station.at),
                          span(room(plan)), "correct its x, y, z"});
    } else if (const double away_mm = geometry::distance_mm(station.at, zone.extent);
               away_mm > zone_spare_mm) {
      problems.push_back(
          {station.place, fmt::format("{} lies {:.0f} mm from its zone", which, away_mm),
           text(station.at), fmt::format("{}, and 60 mm round it", span(zone.extent)),
           "correct its x, y, z, or the zone's outlines and span"});
    }
  }
}

void check_mount(const Plan& plan, const Mount& mount, Problems& problems) {
  const bool inside = inside_body(plan, mount.at);
  if (!inside) {
    problems.push_back({mount.place, fmt::format("mount {} lies outside the body", mount.what),
                        text(mount.at), span(room(plan)), "correct its at"});
  }
  for (const int number : mount.into)
    if (plan.zone(number) == nullptr)
      problems.push_back({mount.place,
                          fmt::format("mount {} is welded into a zone this body lacks", mount.what),
                          std::to_string(number), "", "correct the number, or add the zone"});
  for (const int number : mount.on) {
    const Zone* zone = plan.zone(number);
    if (zone == nullptr) {
      problems.push_back({mount.place,
                          fmt::format("mount {} stands on a zone this body lacks", mount.what),
                          std::to_string(number), "", "correct the number, or add the zone"});
      continue;
    }
    const double away_mm = geometry::distance_mm(mount.at, zone->extent);
    if (!inside || away_mm <= zone_spare_mm) continue;
    problems.push_back({mount.place,
                        fmt::format("mount {} lies {:.0f} mm from zone {}, on which it stands",
                                    mount.what, away_mm, number),
                        text(mount.at), fmt::format("{}, and 60 mm round it", span(zone->extent)),
                        "correct its at or on, or the zone's outlines and span"});
  }
}

void check_overlap(const Zone& one, const Zone& other, const Drawing& drawing, Problems& problems) {
  const Drawing* lower = one.drawing(drawing.layer, drawing.view);
  if (lower == nullptr || !sound(*lower) || !sound(drawing)) return;
  const double smaller = std::min(geometry::area(lower->outline), geometry::area(drawing.outline));
  const double share = geometry::overlap_area(lower->outline, drawing.outline) / smaller;
  if (share <= overlap_share * (1 + 1e-9)) return;
  problems.push_back(
      {drawing.place,
       fmt::format("zones {} and {} overlap {}", one.number, other.number, sheet(drawing)),
       fmt::format("{:.3g} % of the smaller", 100 * share), "at most 2 %",
       "draw them to a common edge"});
}

void check_overlaps(const Plan& plan, Problems& problems) {
  for (std::size_t i = 0; i < plan.zones.size(); ++i) {
    for (const Drawing& drawing : plan.zones[i].drawn) {
      for (std::size_t j = 0; j < i; ++j) {
        check_overlap(plan.zones[j], plan.zones[i], drawing, problems);
      }
    }
  }
}

void check_openings(const Plan& plan, Problems& problems) {
  for (const Opening& opening : plan.openings)
    if (std::ranges::none_of(plan.zones,
                             [&](const Zone& zone) { return zone.opening == opening.name; }))
      problems.push_back({opening.place, fmt::format("opening {} shows no zone", opening.name), "",
                          "", "name it with `open` at the zones that it shows"});
}

void add_filled(std::vector<geometry::Outline>& shapes, const geometry::Outline& outline) {
  for (const geometry::Ring& ring : outline.rings) shapes.push_back({{ring}, {}});
}

}  // namespace

Problems check_plan(const Plan& plan) {
  Problems problems;
  for (const Zone& zone : plan.zones) {
    check_drawings(plan, zone, problems);
    check_pair(plan, zone, problems);
    check_hides(plan, zone, problems);
    check_hides_both(plan, zone, problems);
    check_joins(plan, zone, problems);
    check_opening(plan, zone, problems);
    check_stations(plan, zone, problems);
  }
  check_overlaps(plan, problems);
  for (const Mount& mount : plan.mounts) {
    check_mount(plan, mount, problems);
    check_condition(plan, mount.when, problems);
  }
  for (const auto& [view, lines] : plan.lines)
    for (const Line& line : lines) check_condition(plan, line.when, problems);
  check_openings(plan, problems);
  for (const Box& box : plan.boxes) check_box(plan, box, problems);
  std::stable_sort(problems.begin(), problems.end(),
                   [](const Problem& a, const Problem& b) { return a.place < b.place; });
  return problems;
}

std::vector<Coverage> coverage(const Plan& plan) {
  std::vector<Coverage> found;
  for (const Layer layer : {Layer::skin, Layer::structure}) {
    for (const View view : {View::left, View::right, View::top, View::underneath, View::front,
                            View::rear, View::frame}) {
      std::vector<geometry::Outline> zones, silhouette;
      for (const Zone& zone : plan.zones) {
        if (const Drawing* drawing = zone.drawing(layer, view)) zones.push_back(drawing->outline);
      }
      if (zones.empty()) continue;
      if (const auto lines = plan.lines.find(view); lines != plan.lines.end()) {
        for (const Line& line : lines->second) {
          if (line.weight != Weight::strong || line.layer.value_or(layer) != layer) continue;
          for (const auto& shape : line.shapes) add_filled(silhouette, shape);
        }
      }
      const bool known = !silhouette.empty();
      for (const auto& zone : zones) add_filled(silhouette, zone);
      const double whole = geometry::union_area(silhouette);
      found.push_back({layer, view, whole > 0 ? geometry::union_area(zones) / whole : 0, known});
    }
  }
  return found;
}

}  // namespace tinworm::body
