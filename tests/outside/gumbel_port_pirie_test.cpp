// Gumbel by maximum likelihood on 65 annual sea-level maxima at Port Pirie; data and the
// three-parameter fit: Coles, An Introduction to Statistical Modeling of Extreme Values, 2001, p.
// 59 (quoted). The two-parameter figures are worked. The set holds the estimator, not the
// corrosion.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "metal/pits.hpp"
#include "metal/repeatability.hpp"
#include "outside/columns.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

using metal::Gumbel;

std::vector<double> sea_levels_m() {
  std::vector<double> levels;
  for (const auto& [year, level_m] : two_columns("port-pirie.csv")) levels.push_back(level_m);
  return levels;
}

TEST(GumbelPortPirie, WorkedFigures) {
  const auto levels = sea_levels_m();
  ASSERT_EQ(levels.size(), 65u);
  const auto fit = metal::fit_gumbel(levels);
  ASSERT_TRUE(fit);
  const std::string source = "Port Pirie (Coles 2001), Gumbel fit (worked)";
  expect_published(source, "location, m", 3.8694435435, fit->location_mm, 1e-9);
  expect_published(source, "scale, m", 0.1948894464, fit->scale_mm, 1e-9);
  expect_published(source, "log-likelihood", 4.2176818963, metal::log_likelihood(*fit, levels),
                   1e-9);
  expect_published(source, "10-fold level, m", 4.308016, metal::return_level_mm(*fit, 10), 1e-6);
  expect_published(source, "100-fold level, m", 4.765964, metal::return_level_mm(*fit, 100), 1e-6);
}

// Coles' fit has a shape of -0.050, within its error of the 0 that Gumbel means: his location and
// scale must be near ours, and his likelihood can only be a little better.
TEST(GumbelPortPirie, NearTheThreeParameterFit) {
  const auto fit = metal::fit_gumbel(sea_levels_m());
  ASSERT_TRUE(fit);
  const std::string source = "Coles 2001 p. 59, fit with a shape of -0.050 (quoted)";
  expect_published(source, "location, m", 3.87, fit->location_mm, 0.01);
  expect_published(source, "scale, m", 0.198, fit->scale_mm, 0.01);
}

// A second method for the maximum: walk the likelihood's surface on an ever finer grid.
TEST(GumbelPortPirie, GridSearchFindsTheSameMaximum) {
  const auto levels = sea_levels_m();
  Gumbel best{4.0, 0.3};
  double best_likelihood = metal::log_likelihood(best, levels);
  for (double step = 0.05; step > 1e-9;) {
    const Gumbel middle = best;
    for (int i = -2; i <= 2; ++i) {
      for (int j = -2; j <= 2; ++j) {
        const Gumbel at{middle.location_mm + i * step, middle.scale_mm + j * step};
        if (at.scale_mm <= 0) continue;
        const double likelihood = metal::log_likelihood(at, levels);
        if (likelihood > best_likelihood) best = at, best_likelihood = likelihood;
      }
    }
    const bool stayed = best.location_mm == middle.location_mm && best.scale_mm == middle.scale_mm;
    if (stayed) step /= 2;
  }
  const auto fit = metal::fit_gumbel(levels);
  ASSERT_TRUE(fit);
  // The surface is flat at its top: its height settles to 1e-12, its place to about 1e-7.
  EXPECT_NEAR(best.location_mm, fit->location_mm, 1e-6);
  EXPECT_NEAR(best.scale_mm, fit->scale_mm, 1e-6);
  EXPECT_GE(metal::log_likelihood(*fit, levels), best_likelihood - 1e-12);
}

// A third: moments, less efficient than likelihood but unbiased by its arithmetic. Mean = location
// + Euler's g x scale, standard deviation = pi scale/sqrt 6.
TEST(GumbelPortPirie, MomentsAreNear) {
  const auto levels = sea_levels_m();
  const auto fit = metal::fit_gumbel(levels);
  ASSERT_TRUE(fit);
  const double scale =
      metal::standard_deviation(levels).value() * std::sqrt(6.0) / std::numbers::pi;
  EXPECT_NEAR(fit->scale_mm, scale, 0.15 * scale);
  EXPECT_NEAR(fit->location_mm, metal::mean(levels) - std::numbers::egamma * scale, 0.02);
}

TEST(GumbelPortPirie, ReducedVariate) {
  const std::vector<std::pair<double, double>> published{
      {2, 0.3665}, {10, 2.2504}, {20, 2.9702}, {50, 3.9019}, {100, 4.6001}};
  for (const auto& [period, y] : published) {
    expect_published("-ln(-ln(1 - 1/T)) (worked)", fmt::format("T = {}", period), y,
                     metal::reduced_variate(period), 0.00005);
  }
}

}  // namespace
}  // namespace tinworm::outside
