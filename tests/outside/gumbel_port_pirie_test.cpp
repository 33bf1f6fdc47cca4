// Gumbel from few maxima, on real ones: 65 annual sea-level maxima at Port Pirie, Coles, An
// Introduction to Statistical Modeling of Extreme Values, 2001. The set holds the estimate, not the
// corrosion: years stand for patches.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

#include <gtest/gtest.h>

#include "metal/pits.hpp"
#include "metal/repeatability.hpp"
#include "outside/columns.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

std::vector<double> sea_levels_m() {
  std::vector<double> levels;
  for (const auto& [year, level_m] : two_columns("port-pirie.csv")) levels.push_back(level_m);
  return levels;
}

// Mean of the estimates of 65/n spans of n years.
metal::Gumbel mean_of_spans(const std::vector<double>& levels, std::size_t years) {
  const std::size_t spans = levels.size() / years;
  metal::Gumbel mean;
  for (std::size_t i = 0; i < spans; ++i) {
    const auto fit = metal::fit_gumbel(std::span(levels).subspan(i * years, years)).value();
    mean.location_mm += fit.location_mm / static_cast<double>(spans);
    mean.scale_mm += fit.scale_mm / static_cast<double>(spans);
  }
  return mean;
}

// The likeliest figures of all 65 years have errors of 0.026 and 0.019 m by themselves; the mean
// of estimates from few years must come to them, however few.
TEST(GumbelPortPirie, EstimatesFromFewYearsComeToThoseOfAll) {
  const auto levels = sea_levels_m();
  ASSERT_EQ(levels.size(), 65u);
  for (const std::size_t years : {5, 6, 8, 13, 16, 20}) {
    const metal::Gumbel mean = mean_of_spans(levels, years);
    const std::string of = fmt::format(", spans of {} years", years);
    const std::string likeliest = "Port Pirie (Coles 2001), Gumbel by likelihood (worked)";
    expect_published(likeliest, "location, m" + of, 3.8694435435, mean.location_mm, 0.02);
    expect_published(likeliest, "scale, m" + of, 0.1948894464, mean.scale_mm, 0.02);
  }
}

// Coles' fit has a shape of -0.050, within its error of the 0 that Gumbel means.
TEST(GumbelPortPirie, NearTheThreeParameterFit) {
  const metal::Gumbel mean = mean_of_spans(sea_levels_m(), 13);
  const std::string source = "Coles 2001 p. 59, fit with a shape of -0.050 (quoted)";
  expect_published(source, "location, m, spans of 13 years", 3.87, mean.location_mm, 0.02);
  expect_published(source, "scale, m, spans of 13 years", 0.198, mean.scale_mm, 0.02);
}

// Moments share nothing with the weights: standard deviation = pi scale/sqrt 6.
TEST(GumbelPortPirie, MomentsAreNear) {
  const auto levels = sea_levels_m();
  const double scale =
      metal::standard_deviation(levels).value() * std::sqrt(6.0) / std::numbers::pi;
  EXPECT_NEAR(mean_of_spans(levels, 13).scale_mm, scale, 0.15 * scale);
}

// From any 5 to 20 years on end, the highest sea of all the others.
TEST(GumbelPortPirie, BoundHoldsTheYearsNotRead) {
  const auto levels = sea_levels_m();
  int held = 0, windows = 0;
  for (const std::size_t years : {5, 10, 20}) {
    for (std::size_t from = 0; from + years <= levels.size(); ++from, ++windows) {
      const auto read = std::span(levels).subspan(from, years);
      const double others = std::max(
          from > 0 ? metal::greatest(std::span(levels).first(from)) : 0,
          from + years < 65 ? metal::greatest(std::span(levels).subspan(from + years)) : 0);
      const metal::DeepestPit pit = metal::deepest_over(read, 65, 1);
      ASSERT_EQ(pit.extrapolation, metal::Extrapolation::made);
      held += others <= pit.bound_mm;
    }
  }
  EXPECT_GE(held, .95 * windows);
}

}  // namespace
}  // namespace tinworm::outside
