#include "metal/thickness.hpp"

#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

constexpr Repeatability scatter{0.04, 10};
constexpr double gauge_mm = 0.05;

const Component& line(const MetalInterval& metal, std::string_view what) {
  for (const Component& c : metal.budget)
    if (c.what == what) return c;
  throw std::out_of_range("no such line in the budget");
}

TEST(Thickness, GaugeErrorNearlyCancelsAgainstAReferenceReadWithIt) {
  const MetalInterval m = metal_left({.80, 4, scatter}, reference({1.00, 2, scatter}), gauge_mm);
  ASSERT_EQ(m.budget.size(), 3u);
  EXPECT_NEAR(m.value, 0.8, 1e-12);
  EXPECT_NEAR(line(m, "scatter of the readings").standard, 0.02, 1e-12);
  EXPECT_NEAR(line(m, "scatter of the readings").sensitivity, 1, 1e-12);
  EXPECT_NEAR(line(m, "scatter of the reference").standard, 0.04 / std::sqrt(2.0), 1e-12);
  EXPECT_NEAR(line(m, "scatter of the reference").sensitivity, -0.8, 1e-12);
  EXPECT_NEAR(line(m, "gauge").sensitivity, 0.2, 1e-12);
  EXPECT_FALSE(line(m, "gauge").degrees_of_freedom);
  // u^2 = 0.02^2 + 0.64 x 0.0008 + 0.01^2 = 0.001012
  EXPECT_NEAR(m.uncertainty.standard, std::sqrt(0.001012), 1e-12);
  // Both scatters are one estimate with 10 degrees of freedom: u^2 = 0.000912.
  const double dof = 0.001012 * 0.001012 / (0.000912 * 0.000912 / 10);
  EXPECT_NEAR(m.uncertainty.degrees_of_freedom.value(), dof, 1e-9);
  EXPECT_NEAR(m.high - m.value, coverage_factor(.95, dof) * std::sqrt(0.001012), 1e-12);
  EXPECT_NEAR(m.value - m.low, m.high - m.value, 1e-12);
}

TEST(Thickness, GaugeErrorCountsInFullAgainstASheetNotMeasured) {
  const MetalInterval m = metal_left({.80, 4, scatter}, stated_sheet(1.00, .20), gauge_mm);
  ASSERT_EQ(m.budget.size(), 3u);
  EXPECT_NEAR(line(m, "gauge").sensitivity, 1, 1e-12);
  EXPECT_NEAR(line(m, "sheet not measured").standard, 0.2 / std::sqrt(3.0), 1e-12);
  EXPECT_NEAR(line(m, "sheet not measured").sensitivity, -0.8, 1e-12);
  EXPECT_FALSE(line(m, "sheet not measured").degrees_of_freedom);
}

TEST(Thickness, PairMayBeOfASlightlyOtherSheet) {
  const Measured t0{1.10, 3, scatter};
  const MetalInterval m = metal_left({.80, 4, scatter}, pair_reference(t0, .05), gauge_mm);
  ASSERT_EQ(m.budget.size(), 4u);
  EXPECT_NEAR(line(m, "sheet of the pair").standard, 0.055 / std::sqrt(3.0), 1e-12);
  EXPECT_NEAR(line(m, "gauge").sensitivity, (1 - .8 / 1.1) / 1.1, 1e-12);
  const MetalInterval own = metal_left({.80, 4, scatter}, reference(t0), gauge_mm);
  EXPECT_GT(m.high, own.high);
  EXPECT_LT(m.low, own.low);
}

TEST(Thickness, CoatingUnderTheSameFilmIsOneErrorInBoth) {
  const Measured spot{.80, 4, scatter, 0.03}, t0{1.00, 3, scatter, 0.03};
  Baseline one_film = reference(t0);
  one_film.same_film = true;
  const MetalInterval same = metal_left(spot, one_film, gauge_mm);
  EXPECT_NEAR(line(same, "coating left on").sensitivity, 0.2, 1e-12);
  EXPECT_EQ(same.budget.size(), 4u);

  const MetalInterval pair = metal_left(spot, pair_reference(t0, .05), gauge_mm);
  EXPECT_NEAR(line(pair, "coating left on").sensitivity, 1, 1e-12);
  EXPECT_NEAR(line(pair, "coating left on the reference").sensitivity, -0.8, 1e-12);

  const MetalInterval sheet = metal_left(spot, stated_sheet(1.00, .10), gauge_mm);
  EXPECT_NEAR(line(sheet, "coating left on").sensitivity, 1, 1e-12);
}

TEST(Thickness, ShownAsMeasuredButNotUnderNothing) {
  const MetalInterval thick =
      metal_left({1.30, 3, scatter}, reference({1.00, 3, scatter}), gauge_mm);
  EXPECT_NEAR(thick.value, 1.3, 1e-12);
  EXPECT_GT(thick.high, 1.3);
  const MetalInterval gone = metal_left({.05, 1, scatter}, stated_sheet(1.00, .20), gauge_mm);
  EXPECT_EQ(gone.low, 0);
  EXPECT_GT(gone.high, gone.value);
}

TEST(Thickness, SamePlaceInInches) {
  const auto at = [](double unit) {
    const Repeatability r{0.04 * unit, 10};
    return metal_left({.80 * unit, 4, r}, reference({1.00 * unit, 3, r}), gauge_mm * unit);
  };
  EXPECT_NEAR(at(1 / 25.4).low, at(1).low, 1e-12);
  EXPECT_NEAR(at(1 / 25.4).high, at(1).high, 1e-12);
}

TEST(Thickness, MoreReadingsNarrowMoreCoverageWidens) {
  const Baseline t0 = reference({1.00, 3, scatter});
  const auto width = [&](int count, double coverage) {
    const MetalInterval m = metal_left({.80, count, scatter}, t0, gauge_mm, coverage);
    return m.high - m.low;
  };
  EXPECT_LT(width(5, .95), width(4, .95));
  EXPECT_LT(width(4, .80), width(4, .95));
}

TEST(Thickness, ReadingEqualToTheMeanNeverWidens) {
  std::mt19937_64 random(51);
  std::normal_distribution<double> scattered(0, .06);
  for (int survey = 0; survey < 500; ++survey) {
    std::vector<double> readings(2 + survey % 4), sound(1 + survey % 3);
    for (double& r : readings) r = .75 + scattered(random);
    for (double& r : sound) r = 1.00 + scattered(random);
    const auto width = [&] {
      const Repeatability pool = pooled({readings, sound}, {});
      const auto measured = [&](const std::vector<double>& set) {
        return Measured{mean(set), static_cast<int>(set.size()), repeatability_of(set, pool, {})};
      };
      const MetalInterval m = metal_left(measured(readings), reference(measured(sound)), gauge_mm);
      return m.high - m.low;
    };
    const double before = width();
    readings.push_back(mean(readings));
    EXPECT_LE(width(), before) << survey;
  }
}

}  // namespace
}  // namespace tinworm::metal
