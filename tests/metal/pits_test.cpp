#include "metal/pits.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include <gtest/gtest.h>

#include "metal/gumbel_table.hpp"
#include "metal/repeatability.hpp"

namespace tinworm::metal {
namespace {

constexpr double patch_mm2 = 2500;
constexpr Gumbel truth{.35, .08};
const std::vector<double> maxima_mm{.42, .31, .38, .55, .36, .33};

std::vector<double> drawn(std::mt19937_64& random, std::size_t count) {
  std::extreme_value_distribution<double> draw(truth.location_mm, truth.scale_mm);
  std::vector<double> values(count);
  for (double& x : values) x = draw(random);
  return values;
}

DeepestPit over_patches(const std::vector<double>& maxima, double patches) {
  return deepest_over(maxima, patches * patch_mm2, patch_mm2);
}

void expect_only_seen(const DeepestPit& pit, double seen_mm, Extrapolation why) {
  EXPECT_EQ(pit.extrapolation, why);
  EXPECT_EQ(pit.seen_mm, seen_mm);
  EXPECT_EQ(pit.likely_mm, seen_mm);
  EXPECT_EQ(pit.bound_mm, seen_mm);
}

TEST(Pits, NoFitOfFewManyOrEqualMaxima) {
  EXPECT_FALSE(fit_gumbel({}));
  EXPECT_FALSE(fit_gumbel(std::vector<double>{.42, .31, .38, .55}));
  EXPECT_FALSE(fit_gumbel(std::vector<double>{.4, .4, .4, .4, .4}));
  EXPECT_TRUE(fit_gumbel(std::vector<double>{.42, .31, .38, .55, .36}));
  std::mt19937_64 random(3);
  EXPECT_TRUE(fit_gumbel(drawn(random, 20)));
  EXPECT_FALSE(fit_gumbel(drawn(random, 21)));
}

TEST(Pits, FitFollowsUnitAndZeroAndOrder) {
  const Gumbel fit = fit_gumbel(maxima_mm).value();
  auto inch = maxima_mm, deeper = maxima_mm, turned = maxima_mm;
  for (double& x : inch) x /= 25.4;
  for (double& x : deeper) x += 3;
  std::ranges::reverse(turned);
  EXPECT_NEAR(fit_gumbel(inch)->location_mm * 25.4, fit.location_mm, 1e-12);
  EXPECT_NEAR(fit_gumbel(inch)->scale_mm * 25.4, fit.scale_mm, 1e-12);
  EXPECT_NEAR(fit_gumbel(deeper)->location_mm, fit.location_mm + 3, 1e-9);
  EXPECT_NEAR(fit_gumbel(deeper)->scale_mm, fit.scale_mm, 1e-9);
  EXPECT_EQ(fit_gumbel(turned)->scale_mm, fit.scale_mm);
}

TEST(Pits, OneFarOutlierIsStillFitted) {
  const auto fit = fit_gumbel(std::vector<double>{.001, .001, .001, .001, 5.0});
  ASSERT_TRUE(fit);
  EXPECT_GT(fit->scale_mm, 0);
}

// Unbiased where maximum likelihood reads 0.1 to 0.3 scales low: mean of 20,000 fits of few maxima.
TEST(Pits, FitIsUnbiased) {
  for (const std::size_t count : {5, 8, 12, 20}) {
    SCOPED_TRACE(count);
    std::mt19937_64 random(1967 + count);
    constexpr int repeats = 20000;
    double location = 0, scale = 0;
    for (int i = 0; i < repeats; ++i) {
      const Gumbel fit = fit_gumbel(drawn(random, count)).value();
      location += fit.location_mm / repeats;
      scale += fit.scale_mm / repeats;
    }
    EXPECT_NEAR(location, truth.location_mm, .015 * truth.scale_mm);
    EXPECT_NEAR(scale, truth.scale_mm, .015 * truth.scale_mm);
  }
}

TEST(Pits, WhatIsNotExtrapolatedSaysWhy) {
  using enum Extrapolation;
  const std::vector<double> four{.2, .3, .4, .1}, equal(6, .3), many(21, .3);
  const struct {
    const char* what;
    std::vector<double> maxima;
    double patches;
    Extrapolation why;
  } cases[] = {
      {"a place smaller than one patch", maxima_mm, .2, all_read},
      {"all of it read", maxima_mm, 6, all_read},
      {"all of it read, to a rounding", maxima_mm, 6 + 1e-12, all_read},
      {"few patches, but all of it", four, 4, all_read},
      {"few patches", four, 10, few_patches},
      {"one patch", {.2}, 10, few_patches},
      {"many patches", many, 100, many_patches},
      {"no scatter", equal, 100, no_scatter},
      {"3 % read", maxima_mm, 200, made},
      {"under 3 % read", maxima_mm, 200.1, small_share},
      {"over 500 patches", std::vector<double>(20, .3), 500.1, large_area},
      {"over 500 patches is told first", maxima_mm, 501, large_area},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    const DeepestPit pit = over_patches(c.maxima, c.patches);
    if (c.why != made) expect_only_seen(pit, greatest(c.maxima), c.why);
    EXPECT_EQ(pit.extrapolation, c.why);
  }
}

TEST(Pits, SizesInInchesChangeNoReason) {
  EXPECT_EQ(deepest_over(maxima_mm, 6 * 2.1 * 25.4 * 25.4, 2.1 * 25.4 * 25.4).extrapolation,
            Extrapolation::all_read);
}

// By hand, from the weights published for n = 5: location .20871, scale .040266. Of 20 patches 15
// aren't read: ln 15 + .36651 = 3.07456 scales to the likely deepest, and, between 7.765 at 10 and
// 8.818 at 20, 8.381 scales to its bound.
TEST(Pits, WorkedExample) {
  const DeepestPit pit =
      deepest_over(std::vector<double>{.18, .22, .25, .21, .30}, 500 * 100, 2500);
  EXPECT_EQ(pit.extrapolation, Extrapolation::made);
  EXPECT_EQ(pit.seen_mm, .30);
  EXPECT_NEAR(pit.likely_mm, .33251, 2e-5);
  EXPECT_NEAR(pit.bound_mm, .66998, 5e-5);
}

TEST(Pits, SeenLikelyAndBoundRise) {
  std::mt19937_64 random(7);
  for (int i = 0; i < 500; ++i) {
    const auto maxima = drawn(random, 5 + static_cast<std::size_t>(i) % 16);
    const double most = std::min(500.0, static_cast<double>(maxima.size()) / .03);
    const double patches = std::uniform_real_distribution(1.0, most)(random);
    const DeepestPit pit = over_patches(maxima, patches);
    EXPECT_EQ(pit.seen_mm, greatest(maxima));
    EXPECT_LE(pit.seen_mm, pit.likely_mm);
    EXPECT_LE(pit.likely_mm, pit.bound_mm);
  }
}

TEST(Pits, LargerAreaNeverHasAShallowerPit) {
  DeepestPit before;
  for (double patches = 0.5; patches <= 200; patches *= 1.03) {
    const DeepestPit pit = over_patches(maxima_mm, patches);
    EXPECT_GE(pit.likely_mm, before.likely_mm) << patches;
    EXPECT_GE(pit.bound_mm, before.bound_mm) << patches;
    before = pit;
  }
  EXPECT_GT(before.likely_mm, .55);
}

// Less than a whole patch left counts as one.
TEST(Pits, PartOfAPatchCountsAsOne) {
  EXPECT_EQ(over_patches(maxima_mm, 6.1).bound_mm, over_patches(maxima_mm, 7).bound_mm);
  EXPECT_LT(over_patches(maxima_mm, 7).bound_mm, over_patches(maxima_mm, 7.1).bound_mm);
}

TEST(Pits, WhatAPitLeaves) {
  EXPECT_NEAR(pit_left(.80, .30, 1.0), 0.5, 1e-12);
  EXPECT_NEAR(pit_left(1.0, .30, 1.0), 0.7, 1e-12) << "no readings: the sheet itself";
  EXPECT_LT(pit_left(.25, .30, 1.0), 0) << "through";
}

}  // namespace
}  // namespace tinworm::metal
