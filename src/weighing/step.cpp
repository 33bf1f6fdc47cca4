#include "weighing/step.hpp"

#include <array>

#include "metal/damage.hpp"
#include "survey/signs.hpp"

namespace tinworm::weighing {

namespace {
constexpr double on_the_limit = 1e-9;
}

Step step_of(double metal_left, bool rusted, const rules::Rules& rules) {
  const double m = metal_left + on_the_limit;
  if (m >= rules.sound_limit) return rusted ? Step::film : Step::sound;
  if (m >= rules.repair_limit) return Step::pitted;
  if (m >= rules.weak_limit) return Step::thin;
  return Step::weak;
}

Step least_step(const survey::Spot& spot, const MetalLeft& metal, bool near,
                const rules::Rules& rules) {
  if (holed(spot) || breaks(spot)) return Step::holed;
  const bool pitted_through = metal.pit_left && *metal.pit_left <= 0;
  if (gives(spot) || pitted_through || (spot.crack_mm && near)) return Step::weak;
  const bool past_pit_limit =
      metal.pit_left && *metal.pit_left + on_the_limit < rules.pit_left_limit;
  if (spot.crack_mm || past_pit_limit) return Step::thin;
  return Step::sound;
}

double damage(double metal_left, const rules::Rules& rules) {
  const std::array<metal::DamageKnot, 5> knots = {{{1, 0},
                                                   {rules.sound_limit, rules.damage_at_sound},
                                                   {rules.repair_limit, rules.damage_at_limit},
                                                   {rules.weak_limit, rules.damage_at_weak},
                                                   {0, 1}}};
  return metal::damage(metal_left, knots);
}

}  // namespace tinworm::weighing
