#include "metal/corrosivity.hpp"

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(Corrosivity, WordsAreTheStandards) {
  EXPECT_EQ(word(Corrosivity::c1), "C1");
  EXPECT_EQ(word(Corrosivity::c4), "C4");
  EXPECT_EQ(word(Corrosivity::cx), "CX");
}

TEST(Corrosivity, LossNeverShrinksOverTheYears) {
  double power = 0, tangent = 0;
  for (double years = 0; years < 60; years += 0.5) {
    EXPECT_GE(power_law_loss(50, years, steel_b1), power) << years;
    EXPECT_GE(tangent_loss(50, years, steel_b1), tangent) << years;
    EXPECT_GE(tangent_loss(50, years, steel_b1), power_law_loss(50, years, steel_b1) - 1e-9);
    power = power_law_loss(50, years, steel_b1), tangent = tangent_loss(50, years, steel_b1);
  }
}

TEST(Corrosivity, FirstYearIsTheFirstYear) {
  for (const double b : {steel_b1, steel_b2, zinc_b1, zinc_b2}) {
    EXPECT_EQ(power_law_loss(37, 1, b), 37);
    EXPECT_EQ(power_law_loss(37, 0, b), 0);
  }
}

// Thickness and mass of one band agree at the density of steel, 7850 kg/m3 (memory), but for the
// standard's rounding of both.
TEST(Corrosivity, MassAndThicknessAreNearlyOneTable) {
  for (const auto category : {Corrosivity::c1, Corrosivity::c2, Corrosivity::c3, Corrosivity::c4,
                              Corrosivity::c5, Corrosivity::cx}) {
    const double g_per_m2 = first_year_um(category).high * 7.85;
    EXPECT_NEAR(g_per_m2, first_year_g_per_m2(category).high, 0.05 * g_per_m2) << word(category);
  }
}

}  // namespace
}  // namespace tinworm::metal
