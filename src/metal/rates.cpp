#include "metal/rates.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace tinworm::metal {

double loss_rate(double before_mm, double now_mm, double years) {
  return (before_mm - now_mm) / years;
}

GoverningRate governing_rate(double long_term, double short_term) {
  return {long_term, short_term, short_term > long_term, std::max(long_term, short_term)};
}

std::optional<double> remaining_life(double now_mm, double required_mm, double rate) {
  if (now_mm <= required_mm) return 0;
  if (!(rate > 0)) return std::nullopt;
  return (now_mm - required_mm) / rate;
}

double half_life_interval(std::optional<double> life, double cap) {
  return life ? std::min(*life / 2, cap) : cap;
}

double power_law_life(double loss_mm, double allowed_mm, double age_years, double b) {
  return age_years * (std::pow(allowed_mm / loss_mm, 1 / b) - 1);
}

std::optional<LifeRange> life_to_loss(double loss_mm, double allowed_mm, const RateRange& rate,
                                      std::optional<double> age_years,
                                      std::span<const double> exponents) {
  if (loss_mm >= allowed_mm) return LifeRange{0, 0};
  std::vector<double> lives;
  for (const double r : {rate.low, rate.high}) {
    if (r > 0) lives.push_back((allowed_mm - loss_mm) / r);
  }
  const bool has_power_law = age_years && *age_years > 0 && !exponents.empty();
  if (has_power_law && loss_mm > 0) {
    for (const double b : exponents)
      lives.push_back(power_law_life(loss_mm, allowed_mm, *age_years, b));
  }
  if (lives.empty()) return std::nullopt;

  LifeRange life{std::ranges::min(lives), std::nullopt};
  const bool may_never_come = rate.low <= 0 || (has_power_law && loss_mm <= 0);
  if (!may_never_come) life.high_years = std::ranges::max(lives);
  return life;
}

}  // namespace tinworm::metal
