// What a box with rusted walls keeps of its stiffness when new: an indication only. Spot welds,
// buckling and hidden rust are not in it.
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "boxes/strip.hpp"
#include "geometry/point.hpp"

namespace tinworm::boxes {

struct WallStrips {
  double sheet_mm = 0;  // when new, above 0
  std::vector<Strip> strips;
};

struct Kept {
  double twist = 1;            // 0 to 1, of the whole length
  double bending = 1;          // 0 to 1, at the weakest place, about the weaker of both axes
  geometry::Interval weakest;  // where that is, along the axis, mm; the first of equals
};

// `walls` in the order of box.walls. The length is cut where a strip begins or ends; strips beyond
// `from` and `to` are cut off there. Twist adds in series, J_eff = L / Σ(l / J); bending is the
// least over the intervals. An axis about which the section has no stiffness of its own (all its
// points in one line) isn't counted. Throws std::invalid_argument if walls and box don't match, a
// sheet isn't above 0, λ isn't within 0 and 1, or the
// box or a wall has no length.
Kept kept(const body::Box& box, const std::vector<WallStrips>& walls);

}  // namespace tinworm::boxes
