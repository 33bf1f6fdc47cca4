// How fast metal goes and how long it lasts by that rate: planning figures, never a date of
// failure. Thicknesses in one unit throughout (mm here), rates in that unit per year, losses > 0.
//
// Source of rate, life and interval: API 510, 10th edition, 7.1.1, 7.2.1, 6.5.1.1.
#pragma once

#include <optional>
#include <span>

namespace tinworm::metal {

// (before - now)/years; under 0 where the later reading is thicker. Years over 0.
double loss_rate(double before_mm, double now_mm, double years);

// The greater of the long rate (first survey to now) and the short one (previous to now) governs;
// the long one where they are equal.
struct GoverningRate {
  double long_term = 0;
  double short_term = 0;
  bool short_governs = false;
  double rate = 0;  // the one that governs
};
GoverningRate governing_rate(double long_term, double short_term);

// (now - required)/rate: 0 where nothing is left to lose, none where the rate is 0 or less.
std::optional<double> remaining_life(double now_mm, double required_mm, double rate);

// When to look again: half the life, at most the cap; the cap where there is no life. Both in one
// unit of time.
double half_life_interval(std::optional<double> life, double cap);

struct RateRange {  // an interval, low <= value <= high; the low end may be under 0
  double low = 0;
  double value = 0;
  double high = 0;
};

struct LifeRange {
  double low_years = 0;
  std::optional<double> high_years;  // none: no upper end
};

// Age t at which a loss that has reached `loss` at `age` reaches `allowed` by the power law of ISO
// 9224, less that age: age (allowed/loss)^(1/b) - age. Loss and age over 0.
double power_law_life(double loss_mm, double allowed_mm, double age_years, double b);

// Years until the loss reaches what is allowed: the span of the straight line at both ends of the
// rate and, where the age is known, of the power law at each exponent. 0 to 0 where it is reached.
// No upper end where the rate's low end is 0 or less, or no loss is there yet to scale a power law
// by. None where no method gives any figure.
std::optional<LifeRange> life_to_loss(double loss_mm, double allowed_mm, const RateRange& rate,
                                      std::optional<double> age_years,
                                      std::span<const double> exponents);

}  // namespace tinworm::metal
