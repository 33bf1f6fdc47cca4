// The best linear unbiased estimate for Gumbel against weights and quantiles from elsewhere.
#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

#include "metal/gumbel_table.hpp"
#include "metal/pits.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

TEST(GumbelEstimate, WeightsOfFive) {
  const std::vector<double> location{.41893, .24628, .16761, .10882, .05835};
  const std::vector<double> scale{-.50313, .00653, .13045, .18166, .18448};
  const std::string source = "Gumbel, best linear unbiased weights, n = 5 (memory)";
  for (std::size_t i = 0; i < 5; ++i) {
    const std::string of = fmt::format(", value {} of 5", i + 1);
    expect_published(source, "location" + of, location[i], metal::gumbel_row(5).location[i], 6e-6);
    expect_published(source, "scale" + of, scale[i], metal::gumbel_row(5).scale[i], 6e-6);
  }
}

// Pits of .18 .22 .25 .21 .30 mm on 50 x 50 over 500 x 100: the level of 20 patches.
TEST(GumbelEstimate, LevelOfTwenty) {
  const auto fit = metal::fit_gumbel(std::vector<double>{.18, .22, .25, .21, .30});
  ASSERT_TRUE(fit);
  expect_published("level at T = 20 by the weights of five (worked)", "five pits, mm", .328,
                   fit->location_mm + 2.9702 * fit->scale_mm, 5e-4);
}

// (level - estimate)/scale is a pivot: its quantile doesn't hang on what is estimated.
double level_pivot(std::size_t n, double period, double share) {
  std::mt19937_64 random(1954 + n);
  std::extreme_value_distribution<double> draw(0, 1);
  const double y = -std::log(-std::log1p(-1 / period));
  std::vector<double> pivots(200000), values(n);
  for (double& pivot : pivots) {
    for (double& x : values) x = draw(random);
    const metal::Gumbel fit = metal::fit_gumbel(values).value();
    pivot = (y - fit.location_mm) / fit.scale_mm - y;
  }
  const auto at = pivots.begin() + static_cast<std::ptrdiff_t>(share * 200000);
  std::ranges::nth_element(pivots, at);
  return *at;
}

TEST(GumbelEstimate, QuantilesOfTheLevel) {
  const struct {
    std::size_t n;
    double period, share, pivot;
  } published[] = {
      {5, 10, .95, 3.49},    {5, 10, .975, 4.73},   {5, 100, .95, 6.66},  {5, 100, .975, 9.10},
      {8, 10, .975, 2.84},   {8, 100, .975, 5.30},  {8, 500, .975, 7.02}, {10, 10, .975, 2.33},
      {10, 100, .975, 4.30}, {10, 500, .975, 5.69}, {20, 10, .975, 1.37}, {20, 100, .975, 2.49},
      {20, 500, .975, 3.27},
  };
  for (const auto& p : published) {
    expect_published("pivot of a Gumbel level, 4 million runs (worked)",
                     fmt::format("n = {}, T = {}, {}", p.n, p.period, p.share), p.pivot,
                     level_pivot(p.n, p.period, p.share), .025 * p.pivot);
  }
}

}  // namespace
}  // namespace tinworm::outside
