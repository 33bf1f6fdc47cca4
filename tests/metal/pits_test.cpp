#include "metal/pits.hpp"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

#include "metal/repeatability.hpp"

namespace tinworm::metal {
namespace {

const std::vector<double> maxima_mm{.42, .31, .38, .55, .36, .33};

TEST(Pits, NoFitOfFewOrEqualMaxima) {
  EXPECT_FALSE(fit_gumbel({}));
  EXPECT_FALSE(fit_gumbel(std::vector<double>{.42, .31, .38, .55}));
  EXPECT_FALSE(fit_gumbel(std::vector<double>{.4, .4, .4, .4, .4}));
  EXPECT_TRUE(fit_gumbel(std::vector<double>{.42, .31, .38, .55, .36}));
  EXPECT_TRUE(fit_gumbel(std::vector<double>{.42, .31, .38, .55}, 4));
  EXPECT_FALSE(fit_gumbel({}, 0));
}

TEST(Pits, NothingNearbyIsLikelier) {
  const Gumbel fit = fit_gumbel(maxima_mm).value();
  const double best = log_likelihood(fit, maxima_mm);
  for (const double step : {1e-2, 1e-4, 1e-6}) {
    for (int i = -1; i <= 1; ++i) {
      for (int j = -1; j <= 1; ++j) {
        if (i == 0 && j == 0) continue;
        const Gumbel near{fit.location_mm + i * step, fit.scale_mm + j * step};
        EXPECT_LT(log_likelihood(near, maxima_mm), best) << step << ' ' << i << ' ' << j;
      }
    }
  }
}

TEST(Pits, FitFollowsUnitAndZeroAndOrder) {
  const Gumbel fit = fit_gumbel(maxima_mm).value();
  auto inch = maxima_mm, deeper = maxima_mm, turned = maxima_mm;
  for (double& x : inch) x /= 25.4;
  for (double& x : deeper) x += 3;
  std::ranges::reverse(turned);
  EXPECT_NEAR(fit_gumbel(inch)->location_mm * 25.4, fit.location_mm, 1e-12);
  EXPECT_NEAR(fit_gumbel(inch)->scale_mm * 25.4, fit.scale_mm, 1e-12);
  EXPECT_NEAR(fit_gumbel(deeper)->location_mm, fit.location_mm + 3, 1e-12);
  EXPECT_NEAR(fit_gumbel(deeper)->scale_mm, fit.scale_mm, 1e-12);
  EXPECT_NEAR(fit_gumbel(turned)->scale_mm, fit.scale_mm, 1e-12);
}

TEST(Pits, OneFarOutlierIsStillFitted) {
  const std::vector<double> far{.001, .001, .001, .001, 5.0};
  const auto fit = fit_gumbel(far);
  ASSERT_TRUE(fit);
  EXPECT_GT(fit->scale_mm, 0);
  EXPECT_LE(fit->scale_mm, mean(far) - least(far));
  EXPECT_TRUE(std::isfinite(log_likelihood(*fit, far)));
}

TEST(Pits, FitFindsWhatItWasDrawnFrom) {
  std::mt19937_64 random(20250412);
  std::extreme_value_distribution<double> draw(.35, .08);
  std::vector<double> many(20000);
  for (double& x : many) x = draw(random);
  const Gumbel fit = fit_gumbel(many).value();
  EXPECT_NEAR(fit.location_mm, .35, 0.003);
  EXPECT_NEAR(fit.scale_mm, .08, 0.002);
}

// The variance is the one the design states with rounded coefficients.
TEST(Pits, VarianceOfTheLevel) {
  for (const double period : {1.5, 5.0, 20.0, 400.0}) {
    const double y = reduced_variate(period);
    const double u = .08 * std::sqrt((1.10867 + .51404 * y + .60793 * y * y) / 6);
    EXPECT_NEAR(return_level_standard_mm({.35, .08}, period, 6), u, 1e-5 * u) << period;
  }
}

// Shibata's method predicts the deepest pit; simulate it: the standard uncertainty of the level is
// that of many repeats (within the few per cent that its large-sample form allows for 30 maxima).
TEST(Pits, LevelScattersAsItsUncertaintySays) {
  std::mt19937_64 random(1967);
  std::extreme_value_distribution<double> draw(.35, .08);
  std::vector<double> levels;
  for (int repeat = 0; repeat < 4000; ++repeat) {
    std::vector<double> maxima(30);
    for (double& x : maxima) x = draw(random);
    levels.push_back(return_level_mm(fit_gumbel(maxima).value(), 50));
  }
  const double expected = return_level_standard_mm({.35, .08}, 50, 30);
  EXPECT_NEAR(standard_deviation(levels).value(), expected, 0.06 * expected);
}

TEST(Pits, DeepestOverALargerArea) {
  const auto deepest = deepest_over(maxima_mm, 120 * 2500.0, 2500);
  ASSERT_TRUE(deepest);
  EXPECT_TRUE(deepest->extrapolated);
  EXPECT_EQ(deepest->return_period, 120);
  const Gumbel fit = fit_gumbel(maxima_mm).value();
  EXPECT_EQ(deepest->depth_mm, return_level_mm(fit, 120));
  EXPECT_EQ(deepest->standard_mm, return_level_standard_mm(fit, 120, 6));
}

TEST(Pits, NeverUnderTheDeepestSeen) {
  for (const double patches : {0.2, 1.0, 1.2, 3.0}) {
    const auto deepest = deepest_over(maxima_mm, patches * 2500, 2500);
    ASSERT_TRUE(deepest) << patches;
    EXPECT_EQ(deepest->depth_mm, .55) << patches;
    EXPECT_FALSE(deepest->extrapolated) << patches;
    EXPECT_EQ(deepest->standard_mm == 0, patches <= 1) << patches;
  }
  EXPECT_FALSE(deepest_over(std::vector<double>{.3, .4}, 1e6, 2500));
}

TEST(Pits, LargerAreaNeverHasAShallowerPit) {
  double before = 0;
  for (double patches = 0.5; patches < 2000; patches *= 1.3) {
    const double depth = deepest_over(maxima_mm, patches * 2500, 2500)->depth_mm;
    EXPECT_GE(depth, before) << patches;
    before = depth;
  }
}

TEST(Pits, FactorNeedsAMeanLoss) {
  EXPECT_NEAR(pitting_factor(.55, .22).value(), 2.5, 1e-12);
  EXPECT_FALSE(pitting_factor(.55, 0));
  EXPECT_FALSE(pitting_factor(.55, -.02));
}

TEST(Pits, WhatAPitLeaves) {
  EXPECT_NEAR(pit_left(.80, .30, 1.0), 0.5, 1e-12);
  EXPECT_NEAR(pit_left(1.0, .30, 1.0), 0.7, 1e-12) << "no readings: the sheet itself";
  EXPECT_LT(pit_left(.25, .30, 1.0), 0) << "through";
}

}  // namespace
}  // namespace tinworm::metal
