// NIST Statistical Reference Datasets, linear regression, Norris: certified values (read).
#include <cmath>

#include <gtest/gtest.h>

#include "metal/line.hpp"
#include "outside/columns.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

TEST(NistNorris, CertifiedLine) {
  std::vector<metal::LinePoint> points;
  for (const auto& [y, x] : two_columns("norris.csv")) points.push_back({x, y, 1});
  ASSERT_EQ(points.size(), 36u);
  const auto line = metal::fit_line(points, 0);
  ASSERT_TRUE(line);
  const std::string source = "NIST StRD Norris, certified values";
  expect_published(source, "intercept", -0.262323073774029, line->intercept, 1e-11);
  expect_published(source, "its standard deviation", 0.232818234301152, line->intercept_standard,
                   1e-12);
  expect_published(source, "slope", 1.00211681802045, line->slope, 1e-13);
  expect_published(source, "its standard deviation", 0.429796848199937e-3, line->slope_standard,
                   1e-15);
  expect_published(source, "residual standard deviation", 0.884796396144373, line->residual, 1e-12);
  expect_published(source, "degrees of freedom", 34, line->degrees_of_freedom, 0);
}

// A common standard uncertainty changes neither the line nor, without a prior, its intervals.
TEST(NistNorris, EqualWeightsAreNoWeights) {
  std::vector<metal::LinePoint> points;
  for (const auto& [y, x] : two_columns("norris.csv")) points.push_back({x, y, 0.25});
  const auto line = metal::fit_line(points, 0);
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->slope, 1.00211681802045, 1e-13);
  EXPECT_NEAR(line->slope_standard, 0.429796848199937e-3, 1e-15);
  EXPECT_NEAR(line->residual, 0.884796396144373 / 0.25, 1e-11);
}

}  // namespace
}  // namespace tinworm::outside
