#include "weighing/weigh_box.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "boxes/kept.hpp"
#include "boxes/section.hpp"
#include "survey/signs.hpp"
#include "weighing/burden.hpp"
#include "weighing/nearness.hpp"

namespace tinworm::weighing {
namespace {

using boxes::WallStrips;
using End = double Span::*;

constexpr double tie_mm = 1e-6;

struct Known {
  std::optional<double> u, v;  // in the section's plane
};

Known in_plane(const survey::Position& at, body::Axis axis) {
  switch (axis) {
    case body::Axis::along:
      return {at.y_mm, at.z_mm};
    case body::Axis::across:
      return {at.x_mm, at.z_mm};
    case body::Axis::up:
      return {at.x_mm, at.y_mm};
  }
  return {};
}

// By the coordinates known: both, one, or none, when every wall is as near.
double distance(const Known& at, const geometry::Point& a, const geometry::Point& b) {
  const auto beyond = [](double x, double p, double q) {
    return geometry::Interval{std::min(p, q), std::max(p, q)}.distance(x);
  };
  if (!at.u && !at.v) return 0;
  if (!at.v) return beyond(*at.u, a.u, b.u);
  if (!at.u) return beyond(*at.v, a.v, b.v);
  const double du = b.u - a.u, dv = b.v - a.v;
  const double square = du * du + dv * dv;
  const double t =
      square > 0 ? std::clamp(((*at.u - a.u) * du + (*at.v - a.v) * dv) / square, 0.0, 1.0) : 0;
  return std::hypot(*at.u - a.u - t * du, *at.v - a.v - t * dv);
}

double distance(const Known& at, const boxes::Section& section, std::size_t wall) {
  double nearest = std::numeric_limits<double>::infinity();
  const std::vector<int>& way = section.walls[wall];
  for (std::size_t i = 1; i < way.size(); ++i)
    nearest = std::min(nearest, distance(at, section.points[way[i - 1]], section.points[way[i]]));
  return nearest;
}

struct Setting {
  const body::Box& box;
  boxes::Section section;
  const rules::Rules& rules;
};

std::vector<std::size_t> walls_of(const Setting& in, int zone, const survey::Position& at) {
  const Known known = in_plane(at, in.box.axis);
  std::vector<std::size_t> walls;
  double nearest = std::numeric_limits<double>::infinity();
  for (std::size_t w = 0; w < in.box.walls.size(); ++w)
    if (in.box.walls[w].zone == zone) nearest = std::min(nearest, distance(known, in.section, w));
  for (std::size_t w = 0; w < in.box.walls.size(); ++w)
    if (in.box.walls[w].zone == zone && distance(known, in.section, w) <= nearest + tie_mm)
      walls.push_back(w);
  return walls;
}

void thin_by_spot(const Setting& in, const Spot& spot, const ZoneFacts& facts, End end,
                  std::vector<WallStrips>& walls) {
  const double middle_mm = (in.box.from_mm + in.box.to_mm) / 2;
  const double centre_mm = coordinate(spot.at, in.box.axis).value_or(middle_mm);
  const bool lengthwise = facts.plan->runs == in.box.axis;
  double length_mm = in.rules.unsized_length_share * (in.box.to_mm - in.box.from_mm);
  std::optional<double> width_mm;
  if (spot.size) {
    length_mm = lengthwise ? spot.size->along_mm : spot.size->across_mm;
    width_mm = lengthwise ? spot.size->across_mm : spot.size->along_mm;
  }
  for (const std::size_t w : walls_of(in, facts.number, spot.at))
    walls[w].strips.push_back({centre_mm - length_mm / 2, centre_mm + length_mm / 2,
                               width_mm.value_or(boxes::width_mm(in.section, w)),
                               spot.metal.weighed.*end});
}

// What a whole wall may have lost where nothing says so.
void thin_unproved(const Setting& in, double least, int zone, std::vector<WallStrips>& walls) {
  if (least >= 1) return;
  for (std::size_t w = 0; w < in.box.walls.size(); ++w)
    if (in.box.walls[w].zone == zone)
      walls[w].strips.push_back(
          {in.box.from_mm, in.box.to_mm, boxes::width_mm(in.section, w), least});
}

bool in_box(const body::Box& box, int zone) {
  return std::ranges::find(box.walls, zone, &body::BoxWall::zone) != box.walls.end();
}

boxes::Kept at_end(const Setting& in, const std::vector<Zone>& zones,
                   const std::vector<ZoneFacts>& facts, End end) {
  std::vector<WallStrips> walls(in.box.walls.size());
  const bool low = end == &Span::low;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (!facts[i].plan || !in_box(in.box, facts[i].number)) continue;
    for (std::size_t w = 0; w < walls.size(); ++w)
      if (in.box.walls[w].zone == facts[i].number) walls[w].sheet_mm = facts[i].plan->sheet_mm;
    if (low)
      thin_unproved(in,
                    facts[i].is_seen() ? least_unproved(zones[i], facts[i], in.rules)
                                       : in.rules.least_inside_not_seen,
                    facts[i].number, walls);
    for (const Spot& spot : zones[i].spots)
      if (spot.found || (spot.is_repair && low)) thin_by_spot(in, spot, facts[i], end, walls);
  }
  return boxes::kept(in.box, walls);
}

// The hand finds a weak place, not where it ends: no figure may be made of it.
bool any_gives_way(const survey::Zone& zone) {
  return std::ranges::any_of(zone.found, survey::gives_way);
}

std::string why_withheld(const body::Box& box, const std::vector<Zone>& zones,
                         const std::vector<ZoneFacts>& facts) {
  bool any_seen = false;
  std::string inside, seam, gives;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (!facts[i].plan || !in_box(box, facts[i].number)) continue;
    any_seen = any_seen || facts[i].is_seen();
    if (!facts[i].inside_seen()) inside = title(zones[i]);
    for (const Spot& spot : zones[i].spots)
      if (spot.rust == word(survey::Rust::seam)) seam = title(zones[i]);
    if (facts[i].entry && any_gives_way(*facts[i].entry)) gives = title(zones[i]);
  }
  if (!any_seen) return "none of its walls was seen";
  if (!inside.empty()) return fmt::format("the inside of {} wasn't seen", inside);
  if (!seam.empty()) return fmt::format("a seam of {} is rusted", seam);
  if (!gives.empty()) return fmt::format("{} gives way, and how far isn't known", gives);
  return "";
}

}  // namespace

BoxResult weigh_box(const body::Box& box, const std::vector<Zone>& zones,
                    const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  BoxResult result;
  result.name = box.name;
  result.withheld = why_withheld(box, zones, facts);
  if (!result.withheld.empty()) return result;
  const Setting in{box, boxes::section(box), rules};
  const boxes::Kept low = at_end(in, zones, facts, &Span::low);
  const boxes::Kept value = at_end(in, zones, facts, &Span::value);
  const boxes::Kept high = at_end(in, zones, facts, &Span::high);
  result.twist_kept = Span{low.twist, value.twist, high.twist};
  result.bending_kept = Span{low.bending, value.bending, high.bending};
  return result;
}

}  // namespace tinworm::weighing
