// Damage of a place, 0 (none) to 1 (gone), from the fraction of metal left.
#pragma once

#include <span>

namespace tinworm::metal {

struct DamageKnot {
  double metal_left = 1;  // lambda
  double damage = 0;
};

// Straight lines between the knots, which run from the most metal to the least, each with less
// metal than the one before; level beyond the ends. At least one knot.
double damage(double metal_left, std::span<const DamageKnot> knots);

}  // namespace tinworm::metal
