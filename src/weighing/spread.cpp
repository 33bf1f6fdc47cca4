#include "weighing/spread.hpp"

#include <algorithm>
#include <optional>

#include "geometry/area.hpp"
#include "weighing/holes.hpp"
#include "weighing/nearness.hpp"

namespace tinworm::weighing {
namespace {

using geometry::Interval;

constexpr double tie = 1e-9;  // metal left that differs by less is the same

Interval clipped(const Interval& part, const Interval& whole) {
  return {std::clamp(part.low, whole.low, whole.high),
          std::clamp(part.high, whole.low, whole.high)};
}

Interval around(double centre, double length) {
  return {centre - length / 2, centre + length / 2};
}

using End = double Span::*;

// Metal left of a place beside its hole; of the whole place where it has none.
Span beside_hole(const Spot& spot) {
  return spot.signs.hole && !spot.signs.pinhole ? spot.beside : spot.metal.weighed;
}

struct Piece {  // of the zone's length, with one figure of metal left
  std::optional<Interval> placed;
  double length_mm = 0;  // where it isn't placed
  Span metal;
};

Piece piece(const Spot& spot, const body::Zone& zone, std::optional<double> along_mm, Span metal,
            const rules::Rules& rules) {
  const Interval whole = extent(zone.extent, zone.runs);
  if (!along_mm) return {{}, rules.unsized_length_share * whole.length(), metal};
  const auto centre = coordinate(spot.at, zone.runs);
  if (!centre) return {{}, *along_mm, metal};
  return {clipped(around(*centre, *along_mm), whole), 0, metal};
}

std::optional<double> along_of(const std::vector<survey::Size>& holes) {
  if (holes.empty()) return std::nullopt;
  double along_mm = 0;
  for (const survey::Size& hole : holes) along_mm += hole.along_mm;
  return along_mm;
}

std::vector<Piece> pieces(const std::vector<Spot>& spots, const body::Zone& zone,
                          const rules::Rules& rules) {
  std::vector<Piece> all;
  for (const Spot& spot : spots) {
    if (!spot.found) continue;
    const bool hole = spot.signs.hole && !spot.signs.pinhole;
    if (hole) all.push_back(piece(spot, zone, along_of(spot.holes), {0, 0, 0}, rules));
    if (hole && spot.signs.alone) continue;
    const bool sized = spot.size && !spot.size_assumed;
    all.push_back(piece(spot, zone, sized ? std::optional(spot.size->along_mm) : std::nullopt,
                        beside_hole(spot), rules));
  }
  return all;
}

// Covered length over the zone's, by pieces with no more metal than `metal` at this end.
double covered_share(const std::vector<Piece>& pieces, const body::Zone& zone, double metal,
                     End end) {
  const Interval whole = extent(zone.extent, zone.runs);
  if (whole.length() <= 0) return 1;
  std::vector<Interval> placed;
  double others_mm = 0;
  for (const Piece& each : pieces) {
    if (each.metal.*end > metal + tie) continue;
    if (each.placed)
      placed.push_back(*each.placed);
    else
      others_mm += each.length_mm;
  }
  return std::min(1.0, (geometry::union_length(placed) + others_mm) / whole.length());
}

// At the low end of a share metal left is at its high one.
Span shares(const std::vector<Piece>& pieces, const body::Zone& zone, const Span& metal) {
  return {covered_share(pieces, zone, metal.high, &Span::high),
          covered_share(pieces, zone, metal.value, &Span::value),
          covered_share(pieces, zone, metal.low, &Span::low)};
}

}  // namespace

std::vector<Spread> spread(std::vector<Spot>& spots, const ZoneFacts& zone,
                           const rules::Rules& rules) {
  const Span all{1, 1, 1};
  std::vector<Piece> parts;
  if (zone.plan) parts = pieces(spots, *zone.plan, rules);
  std::vector<Spread> found;
  for (Spot& spot : spots) {
    const bool near = spot.bearing.near != Near::no;
    const bool lone_pinhole = spot.signs.pinhole && spot.signs.alone;
    Spread here;
    if (!spot.found && !spot.is_repair)
      here = {};
    else if ((near && !lone_pinhole) || spot.is_repair || !zone.plan)
      here = {all, all};
    else
      here = {shares(parts, *zone.plan, beside_hole(spot)), shares(parts, *zone.plan, {0, 0, 0})};
    const bool hole = spot.signs.hole && !spot.signs.pinhole;
    spot.share_of_length = hole && spot.signs.alone ? here.hole.value : here.place.value;
    found.push_back(here);
  }
  return found;
}

double rusted_share(const std::vector<Spot>& spots, const body::Zone& zone,
                    const rules::Rules& rules) {
  const double zone_mm2 = zone.area_m2 * 1e6;
  if (zone_mm2 <= 0) return 0;
  const body::Axis across = across_axis(zone);
  std::vector<geometry::Rect> placed;
  double others_mm2 = 0;
  for (const Spot& spot : spots) {
    if (!spot.found || spot.is_repair) continue;
    const auto u = coordinate(spot.at, zone.runs), v = coordinate(spot.at, across);
    if (!spot.size) {
      others_mm2 += std::max(rules.unsized_area_share * zone_mm2, area_mm2(spot.holes));
      continue;
    }
    // Of several holes the largest lies at the place, the others somewhere beside it.
    const survey::Size at_place = spot.size_of_holes ? spot.holes.front() : *spot.size;
    const double place_mm2 = at_place.along_mm * at_place.across_mm;
    if (spot.size_of_holes) others_mm2 += area_mm2(spot.holes) - place_mm2;
    if (u && v)
      placed.push_back({around(*u, at_place.along_mm), around(*v, at_place.across_mm)});
    else
      others_mm2 += place_mm2;
  }
  const double placed_mm2 = placed.empty() ? 0 : geometry::union_area(placed);
  return std::min(1.0, (placed_mm2 + others_mm2) / zone_mm2);
}

}  // namespace tinworm::weighing
