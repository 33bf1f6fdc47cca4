#include "weighing/spread.hpp"

#include <algorithm>

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

// Covered length over the zone's, by spots with no more metal than `metal`.
double covered_share(const std::vector<Spot>& spots, const body::Zone& zone, double metal,
                     const rules::Rules& rules) {
  const Interval whole = extent(zone.extent, zone.runs);
  if (whole.length() <= 0) return 1;
  std::vector<Interval> placed;
  double others_mm = 0;
  for (const Spot& spot : spots) {
    if (!spot.found || spot.metal.weighed.value > metal + tie) continue;
    if (!spot.size || spot.size_assumed) {
      others_mm += rules.unsized_length_share * whole.length();
    } else if (const auto centre = coordinate(spot.at, zone.runs)) {
      placed.push_back(clipped(around(*centre, spot.size->along_mm), whole));
    } else {
      others_mm += spot.size->along_mm;
    }
  }
  return std::min(1.0, (geometry::union_length(placed) + others_mm) / whole.length());
}

}  // namespace

void spread(std::vector<Spot>& spots, const ZoneFacts& zone, const rules::Rules& rules) {
  for (Spot& spot : spots) {
    const bool near = spot.near == Near::on_mount || spot.near == Near::within_radius;
    if (!spot.found && !spot.is_repair)
      spot.share_of_length = 0;
    else if (near || spot.is_repair || !zone.plan)
      spot.share_of_length = 1;
    else
      spot.share_of_length = covered_share(spots, *zone.plan, spot.metal.weighed.value, rules);
  }
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
      others_mm2 += rules.unsized_area_share * zone_mm2;
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
