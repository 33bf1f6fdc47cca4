#include "metal/thickness.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace tinworm::metal {

Baseline reference(const Measured& measured) {
  return {measured.mean_mm, measured, 0, false};
}

Baseline pair_reference(const Measured& measured, double half_width_share) {
  return {measured.mean_mm, measured, half_width_share, false};
}

Baseline stated_sheet(double sheet_mm, double half_width_share) {
  return {sheet_mm, std::nullopt, half_width_share, false};
}

namespace {

constexpr std::string_view scatter_of = "scatter of", coating_left_on = "coating left on";

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
    budget.push_back(
        {"coating left on", spot.coating_mm, one_film ? to_both : to_t, spot.coating_degrees});
  if (measured && !one_film && measured->coating_mm > 0)
    budget.push_back(
        {"coating left on the reference", measured->coating_mm, to_t0, measured->coating_degrees});
  return budget;
}

bool one_scatter(const Measured& spot, const Baseline& baseline) {
  return baseline.measured && baseline.measured->repeatability == spot.repeatability;
}

// Whether how film varies is one estimate for both: the same film readings, or the pair's alike.
bool one_film_scatter(const Measured& spot, const Baseline& baseline) {
  return baseline.measured && !baseline.same_film && spot.coating_mm > 0 &&
         baseline.measured->coating_mm == spot.coating_mm &&
         baseline.measured->coating_degrees == spot.coating_degrees;
}

// Welch-Satterthwaite asks for independent estimates. The scatter of spot and reference is mostly
// one estimate, pooled over the survey, and so is that of the film over a zone; two lines that rest
// on one count as one: else its degrees of freedom would count twice.
std::vector<Component> of_independent_estimates(const std::vector<Component>& budget,
                                                const Measured& spot, const Baseline& baseline) {
  std::vector<Component> scatter, film, rest;
  for (const Component& each : budget) {
    const bool of_film = each.what.starts_with(coating_left_on);
    const bool of_scatter = each.what.starts_with(scatter_of);
    if (of_scatter && one_scatter(spot, baseline))
      scatter.push_back(each);
    else if (of_film && one_film_scatter(spot, baseline))
      film.push_back(each);
    else
      rest.push_back(each);
  }
  for (const auto* both : {&scatter, &film})
    if (!both->empty())
      rest.push_back(
          {both->front().what, combined_standard(*both), 1, both->front().degrees_of_freedom});
  return rest;
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
