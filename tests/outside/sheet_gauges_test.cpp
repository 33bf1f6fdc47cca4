// Sheet gauges and tolerances as published.
#include <gtest/gtest.h>

#include "quantity/sheet.hpp"

namespace tinworm::quantity {
namespace {

// BS 3737:1964, Imperial Standard Wire Gauge, printed mm to three decimals.
TEST(SheetGauges, ImperialStandardWireGauge) {
  const std::pair<int, double> printed[] = {
      {10, 3.251}, {11, 2.946}, {12, 2.642}, {13, 2.337}, {14, 2.032}, {15, 1.829},
      {16, 1.626}, {17, 1.422}, {18, 1.219}, {19, 1.016}, {20, 0.914}, {21, 0.813},
      {22, 0.711}, {23, 0.610}, {24, 0.559}, {25, 0.508}, {26, 0.457}};
  for (const auto& [gauge, mm] : printed) {
    const auto sheet = sheet_gauge_mm(gauge, GaugeScale::swg);
    ASSERT_TRUE(sheet) << gauge;
    EXPECT_NEAR(*sheet, mm, 0.0005 + 1e-9) << gauge << " SWG, mm";
  }
}

// US Manufacturers' Standard Gauge for sheet steel, inch, as quoted; 17, 19, 21 and 23 from memory.
TEST(SheetGauges, ManufacturersStandardGauge) {
  const std::pair<int, double> printed[] = {
      {10, .1345}, {11, .1196}, {12, .1046}, {13, .0897}, {14, .0747}, {15, .0673},
      {16, .0598}, {17, .0538}, {18, .0478}, {19, .0418}, {20, .0359}, {21, .0329},
      {22, .0299}, {23, .0269}, {24, .0239}, {26, .0179}, {28, .0149}};
  for (const auto& [gauge, inch] : printed) {
    const auto sheet = sheet_gauge_mm(gauge, GaugeScale::us);
    ASSERT_TRUE(sheet) << gauge;
    EXPECT_NEAR(*sheet / 25.4, inch, 1e-9) << gauge << " US, inch";
  }
}

// The scale is defined by weight: 41.82 lb/ft2 for each inch of thickness, and its even gauges are
// round ounces per square foot: 20 is 24 oz, 16 is 40 oz (memory). Held to half the last printed
// figure of an inch.
TEST(SheetGauges, ManufacturersStandardGaugeFollowsItsWeight) {
  const std::pair<int, double> ounces[] = {{10, 90}, {12, 70}, {14, 50}, {16, 40}, {18, 32},
                                           {20, 24}, {22, 20}, {24, 16}, {26, 12}, {28, 10}};
  for (const auto& [gauge, ounce] : ounces)
    EXPECT_NEAR(*sheet_gauge_mm(gauge, GaugeScale::us) / 25.4, ounce / 16 / 41.82, 0.00005 + 1e-6)
        << gauge << " US, inch";
}

// The same number on the two scales is not the same sheet, nor far from it: why a bare gauge number
// is refused. 20 gauge is 0.914 mm (SWG) or 0.912 mm (US).
TEST(SheetGauges, TwentyGaugeIsTwoThicknesses) {
  EXPECT_NEAR(*sheet_gauge_mm(20, GaugeScale::swg), 0.914, 0.0005);
  EXPECT_NEAR(*sheet_gauge_mm(20, GaugeScale::us), 0.912, 0.0005);
}

// EN 10131:2006 Table 1, Re < 260 MPa, width up to 1200 mm, normal tolerance, mm. Upper bounds are
// inclusive, lower ones exclusive.
TEST(SheetGauges, En10131NormalTolerance) {
  struct {
    double over, up_to, tolerance;
  } const rows[] = {{.40, .60, .03},   {.60, .80, .04},   {.80, 1.00, .05},  {1.00, 1.20, .06},
                    {1.20, 1.60, .08}, {1.60, 2.00, .10}, {2.00, 2.50, .12}, {2.50, 3.00, .15}};
  for (const auto& row : rows) {
    EXPECT_DOUBLE_EQ(*en10131_tolerance_mm(row.over + 0.001), row.tolerance);
    EXPECT_DOUBLE_EQ(*en10131_tolerance_mm(row.up_to), row.tolerance);
  }
  EXPECT_FALSE(en10131_tolerance_mm(0.40));
  EXPECT_FALSE(en10131_tolerance_mm(3.001));
  EXPECT_FALSE(en10131_tolerance_mm(0));
}

}  // namespace
}  // namespace tinworm::quantity
