#include "weighing/weigh_box.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "boxes/kept.hpp"
#include "boxes/section.hpp"
#include "survey/signs.hpp"
#include "weighing/burden.hpp"
#include "weighing/faces.hpp"

namespace tinworm::weighing {
namespace {

using boxes::WallStrips;
using End = double Span::*;

struct Setting {
  const body::Box& box;
  body::Box split;  // each face a wall of its own
  std::vector<Face> faces;
  boxes::Section section;  // of `split`
  const rules::Rules& rules;
};

// The faces that a place thins: the nearest; where all tie, for a place of known size, the widest
// of each wall.
std::vector<std::size_t> faces_of(const Setting& in, int zone, const Spot& spot) {
  std::vector<const Face*> near = nearest_faces(in.faces, zone, in_plane(spot.at, in.box.axis));
  const InPlane known = in_plane(spot.at, in.box.axis);
  std::vector<std::size_t> found;
  for (const Face* face : near) {
    const auto is_wider = [&](const Face* other) {
      const bool wider = other->length_mm > face->length_mm ||
                         (other->length_mm == face->length_mm && other < face);
      return other->wall == face->wall && other != face && wider;
    };
    const bool once = spot.size && !known.u && !known.v;
    if (once && std::ranges::any_of(near, is_wider)) continue;
    found.push_back(static_cast<std::size_t>(face - in.faces.data()));
  }
  return found;
}

void thin_by_spot(const Setting& in, const Spot& spot, const ZoneFacts& facts, End end,
                  std::vector<WallStrips>& walls) {
  if (!lies_in(spot, *facts.plan, in.box, in.faces, in.rules)) return;
  const auto thin = [&](const std::optional<survey::Size>& size, double lambda) {
    const Extents of = extents(size, *facts.plan, in.box, in.rules);
    const geometry::Interval stretch = along(spot.at, of.along_mm, in.box);
    for (const std::size_t f : faces_of(in, facts.number, spot))
      walls[f].strips.push_back(
          {stretch.low, stretch.high, of.across_mm.value_or(in.faces[f].length_mm), lambda});
  };
  const bool hole = spot.signs.hole && !spot.signs.pinhole;
  for (const survey::Size& size : spot.holes)
    if (hole) thin(size, 0);
  if (hole && spot.signs.alone && !spot.holes.empty()) return;
  thin(spot.size, hole && !spot.signs.alone ? spot.beside.*end : spot.metal.weighed.*end);
}

// What a whole wall may have lost where nothing says so.
void thin_unproved(const Setting& in, double least, int zone, std::vector<WallStrips>& walls) {
  if (least >= 1) return;
  for (std::size_t f = 0; f < in.faces.size(); ++f)
    if (in.faces[f].zone == zone)
      walls[f].strips.push_back({in.box.from_mm, in.box.to_mm, in.faces[f].length_mm, least});
}

bool in_box(const body::Box& box, int zone) {
  return std::ranges::find(box.walls, zone, &body::BoxWall::zone) != box.walls.end();
}

boxes::Kept at_end(const Setting& in, const std::vector<Zone>& zones,
                   const std::vector<ZoneFacts>& facts, End end) {
  std::vector<WallStrips> walls(in.faces.size());
  const bool low = end == &Span::low;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (!facts[i].plan || !in_box(in.box, facts[i].number)) continue;
    for (std::size_t f = 0; f < walls.size(); ++f)
      if (in.faces[f].zone == facts[i].number) walls[f].sheet_mm = facts[i].plan->sheet_mm;
    if (low)
      thin_unproved(
          in,
          facts[i].is_seen() ? least_unproved(facts[i], in.rules) : in.rules.least_inside_not_seen,
          facts[i].number, walls);
    for (const Spot& spot : zones[i].spots)
      if (spot.found || (spot.is_repair && low)) thin_by_spot(in, spot, facts[i], end, walls);
  }
  return boxes::kept(in.split, walls);
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
  const body::Box split = by_faces(box);
  const Setting in{box, split, faces(box), boxes::section(split), rules};
  const boxes::Kept low = at_end(in, zones, facts, &Span::low);
  const boxes::Kept value = at_end(in, zones, facts, &Span::value);
  const boxes::Kept high = at_end(in, zones, facts, &Span::high);
  result.twist_kept = Span{low.twist, value.twist, high.twist};
  result.bending_kept = Span{low.bending, value.bending, high.bending};
  return result;
}

}  // namespace tinworm::weighing
