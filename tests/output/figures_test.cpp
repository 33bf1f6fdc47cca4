#include "output/figures.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace tinworm::output {
namespace {

using quantity::Units;

TEST(Rounded, IsToAMillionthWithoutNegativeZero) {
  EXPECT_EQ(rounded(0.1 + 0.2), 0.3);
  EXPECT_EQ(rounded(0.12345649), 0.123456);
  EXPECT_FALSE(std::signbit(rounded(-1e-9)));
}

TEST(Figures, CarryTheirUnit) {
  EXPECT_EQ(sheet_text(0.8128, Units::mm), "0.81 mm");
  EXPECT_EQ(sheet_text(0.8128, Units::inch), "32 thou");
  EXPECT_EQ(distance_text(148.4, Units::mm), "148 mm");
  EXPECT_EQ(distance_text(25.4, Units::inch), "1.0 in");
  EXPECT_EQ(percent_text(0.844), "84 %");
  EXPECT_EQ(percent_span({0.72, 0.8, 0.88}), "72–80–88 %");
}

TEST(BurdenWord, NeverFallsAsTheBurdenGrows) {
  struct {
    double burden;
    std::string_view word;
  } const cases[] = {{0, "next to none"}, {0.05, "next to none"}, {0.051, "light"},
                     {0.20, "light"},     {0.21, "considerable"}, {0.45, "considerable"},
                     {0.46, "heavy"},     {0.75, "heavy"},        {0.76, "very heavy"},
                     {1, "very heavy"}};
  for (const auto& [burden, word] : cases) EXPECT_EQ(burden_word(burden), word) << burden;
}

}  // namespace
}  // namespace tinworm::output
