#include "metal/damage.hpp"

#include <cmath>

namespace tinworm::metal {

double damage(double metal_left, std::span<const DamageKnot> knots) {
  if (metal_left >= knots.front().metal_left) return knots.front().damage;
  for (std::size_t i = 1; i < knots.size(); ++i) {
    const DamageKnot &more = knots[i - 1], &less = knots[i];
    if (metal_left < less.metal_left) continue;
    const double part = (more.metal_left - metal_left) / (more.metal_left - less.metal_left);
    return std::lerp(more.damage, less.damage, part);
  }
  return knots.back().damage;
}

}  // namespace tinworm::metal
