#include "metal/thickness.hpp"

#include <algorithm>
#include <cmath>

namespace tinworm::metal {

Baseline reference(const Measured& measured) {
  return {measured.mean_mm, measured};
}

Baseline pair_reference(const Measured& measured, double half_width_share) {
  return {measured.mean_mm, measured, half_width_share, false};
}

Baseline stated_sheet(double sheet_mm, double half_width_share) {
  return {sheet_mm, std::nullopt, half_width_share, false};
}

namespace {

Component scatter(const char* what, const Measured& measured, double sensitivity) {
  const double standard_mm = measured.repeatability.standard_mm / std::sqrt(measured.count);
  return {what, standard_mm, sensitivity, measured.repeatability.degrees_of_freedom};
}

std::vector<Component> budget_of(const Measured& spot, const Baseline& baseline,
                                 double gauge_standard_mm) {
  const double to_t = 1 / baseline.sheet_mm;
  const double to_t0 = -spot.mean_mm / (baseline.sheet_mm * baseline.sheet_mm);
  const double to_both = to_t + to_t0;  // (1 - lambda)/t0
  const auto& measured = baseline.measured;

  std::vector<Component> budget{scatter("scatter of the readings", spot, to_t)};
  if (measured) budget.push_back(scatter("scatter of the reference", *measured, to_t0));
  budget.push_back({"gauge", gauge_standard_mm, measured ? to_both : to_t, {}});
  if (baseline.half_width_share > 0) {
    const double standard_mm = rectangular(baseline.half_width_share * baseline.sheet_mm);
    budget.push_back(
        {measured ? "sheet of the pair" : "sheet not measured", standard_mm, to_t0, {}});
  }
  const bool one_film = measured && baseline.same_film;
  if (spot.coating_mm > 0)
    budget.push_back({"coating left on", spot.coating_mm, one_film ? to_both : to_t, {}});
  if (measured && !baseline.same_film && measured->coating_mm > 0)
    budget.push_back({"coating left on the reference", measured->coating_mm, to_t0, {}});
  return budget;
}

// Welch-Satterthwaite asks for independent estimates. The scatter of spot and reference is mostly
// one estimate, pooled over the survey, and then counts as one: else its degrees of freedom would
// count twice.
std::vector<Component> of_independent_estimates(std::vector<Component> budget, const Measured& spot,
                                                const Baseline& baseline) {
  const auto& sound = baseline.measured;
  if (!sound || sound->repeatability != spot.repeatability) return budget;
  const double standard = combined_standard(std::span(budget).first(2));
  budget.erase(budget.begin());
  budget.front() = {"scatter", standard, 1, spot.repeatability.degrees_of_freedom};
  return budget;
}

}  // namespace

MetalInterval metal_left(const Measured& spot, const Baseline& baseline, double gauge_standard_mm,
                         double coverage) {
  const double lambda = spot.mean_mm / baseline.sheet_mm;
  auto budget = budget_of(spot, baseline, gauge_standard_mm);
  const Expanded u = expanded(of_independent_estimates(budget, spot, baseline), coverage);
  return {lambda, std::max(0.0, lambda - u.half_width), lambda + u.half_width, u,
          std::move(budget)};
}

}  // namespace tinworm::metal
