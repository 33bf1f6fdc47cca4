#include "metal/rusted_area.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(RustedArea, MoreRustIsNeverABetterClass) {
  int ri = 0, grade = 10;
  double continuous = 10;
  for (double share = 1e-6; share <= 1.2; share *= 1.01) {
    EXPECT_GE(iso4628_3(share), ri) << share;
    EXPECT_LE(astm_d610(share), grade) << share;
    EXPECT_LE(astm_d610_continuous(share), continuous) << share;
    ri = iso4628_3(share), grade = astm_d610(share), continuous = astm_d610_continuous(share);
  }
}

// Between two bounds the whole grade is the lower end of the continuous one.
TEST(RustedArea, WholeGradeIsTheContinuousOneRoundedDown) {
  for (double share = 1.03e-4; share < 1; share *= 1.037)
    EXPECT_EQ(astm_d610(share), std::floor(astm_d610_continuous(share))) << share;
}

TEST(RustedArea, ContinuousGradeRunsWithTheLogarithm) {
  EXPECT_NEAR(astm_d610_continuous(std::sqrt(.01 * .03)), 5.5, 1e-9);
  EXPECT_NEAR(astm_d610_continuous(std::sqrt(.5 * 1.0)), 0.5, 1e-9);
  EXPECT_EQ(astm_d610_continuous(0), 10);
  EXPECT_EQ(astm_d610_continuous(0.00005), 10);
}

// Unions of rectangles come a hair beside the round share.
TEST(RustedArea, SumOfAreasOnALimitStaysInTheBetterClass) {
  const double share = .01 + .01 + .01;  // 0.030000000000000002 would do as well
  EXPECT_EQ(astm_d610(share * (1 + 1e-12)), 5);
  EXPECT_NEAR(astm_d610_continuous(share * (1 + 1e-12)), 5, 1e-9);
  EXPECT_EQ(iso4628_3(.01 * (1 + 1e-12)), 3);
}

TEST(RustedArea, MoreThanAllIsAll) {
  EXPECT_EQ(astm_d610(1.3), 0);
  EXPECT_EQ(astm_d610_continuous(1.3), 0);
  EXPECT_EQ(iso4628_3(1.3), 5);
}

}  // namespace
}  // namespace tinworm::metal
