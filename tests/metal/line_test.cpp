#include "metal/line.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "metal/uncertainty.hpp"

namespace tinworm::metal {
namespace {

TEST(Line, ThroughPointsOnALine) {
  const std::vector<LinePoint> points{
      {2015, 1.00, .03}, {2018, .94, .02}, {2020, .90, .05}, {2025, .80, .02}};
  const Line line = fit_line(points, 5).value();
  EXPECT_NEAR(line.slope, -.02, 1e-12);
  EXPECT_NEAR(line.intercept + line.slope * 2015, 1.00, 1e-10);
  EXPECT_EQ(line.degrees_of_freedom, 7);
  // No residual of their own: the prior alone speaks.
  EXPECT_NEAR(line.residual, std::sqrt(5.0 / 7), 1e-9);
}

TEST(Line, NoneOfTooFewOrOneDate) {
  EXPECT_FALSE(fit_line({}, 5));
  EXPECT_FALSE(fit_line(std::vector<LinePoint>{{2015, 1, .03}, {2020, .9, .03}}, 5));
  EXPECT_FALSE(
      fit_line(std::vector<LinePoint>{{2015, 1, .03}, {2015, .9, .03}, {2015, .8, .03}}, 5));
}

// Weighted by hand: weights 1, 4, 1 at x 0, 1, 2 and y 0, 1, 1. Means 1 and 5/6; slope
// (1 x 5/6 + 1 x 1/6)/2 = 1/2; intercept 1/3; residuals -1/3, 1/6, -1/3, weighted squares 1/3.
TEST(Line, WeighsEachPoint) {
  const Line line = fit_line(std::vector<LinePoint>{{0, 0, 1}, {1, 1, .5}, {2, 1, 1}}, 0).value();
  EXPECT_NEAR(line.slope, .5, 1e-12);
  EXPECT_NEAR(line.intercept, 1.0 / 3, 1e-12);
  EXPECT_NEAR(line.residual, std::sqrt(1.0 / 3), 1e-12);
  EXPECT_NEAR(line.slope_standard, std::sqrt(1.0 / 6), 1e-12);
  EXPECT_NEAR(line.intercept_standard, std::sqrt((1.0 / 3) * (1.0 / 6 + 1.0 / 2)), 1e-12);
  EXPECT_EQ(line.degrees_of_freedom, 1);
}

TEST(Line, PriorPoolsWithTheResidual) {
  const std::vector<LinePoint> points{{0, 0, 1}, {1, 1, .5}, {2, 1, 1}};
  const Line line = fit_line(points, 5).value();
  EXPECT_NEAR(line.residual, std::sqrt((5 + 1.0 / 3) / 6), 1e-12);
  EXPECT_EQ(line.degrees_of_freedom, 6);
}

TEST(Line, IntervalByStudentT) {
  const Line line = fit_line(std::vector<LinePoint>{{0, 0, 1}, {1, 1, .5}, {2, 1, 1}}, 5).value();
  const Bounds slope = slope_interval(line, .95);
  EXPECT_NEAR(slope.high - line.slope, coverage_factor(.95, 6.0) * line.slope_standard, 1e-12);
  EXPECT_NEAR(line.slope - slope.low, slope.high - line.slope, 1e-12);
}

TEST(Line, YearsCountedFromElsewhereChangeNothing) {
  const std::vector<LinePoint> near{{0, 1.00, .03}, {3, .95, .02}, {5, .88, .05}};
  auto far = near;
  for (LinePoint& p : far) p.x += 2015;
  EXPECT_NEAR(fit_line(far, 5)->slope, fit_line(near, 5)->slope, 1e-12);
  EXPECT_NEAR(fit_line(far, 5)->slope_standard, fit_line(near, 5)->slope_standard, 1e-12);
}

}  // namespace
}  // namespace tinworm::metal
