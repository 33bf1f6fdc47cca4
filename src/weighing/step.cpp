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
  if (m >= rules.sound_limit) return rusted ? Step::bloom : Step::sound;
  if (m >= rules.repair_limit) return Step::pitted;
  if (m >= rules.weak_limit) return Step::thin;
  return Step::weak;
}

bool past_pit_limit(double pit_left, const rules::Rules& rules) {
  return pit_left + on_the_limit < rules.pit_left_limit;
}

bool pitted_through(double pit_left) {
  return pit_left <= on_the_limit;
}

Step least_step(const survey::Spot& spot, std::optional<double> pit_left, bool near,
                const rules::Rules& rules) {
  if (holed(spot) || breaks(spot)) return Step::holed;
  const bool is_pitted_through = pit_left && pitted_through(*pit_left);
  if (gives(spot) || is_pitted_through || (spot.crack_mm && near)) return Step::weak;
  if (spot.crack_mm || (pit_left && past_pit_limit(*pit_left, rules))) return Step::thin;
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
