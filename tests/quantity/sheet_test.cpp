#include "quantity/sheet.hpp"

#include <gtest/gtest.h>

namespace tinworm::quantity {
namespace {

TEST(Sheet, TakesThicknessOrGaugeWithItsScale) {
  struct {
    std::string text;
    double mm;
  } const cases[] = {{"1.1", 1.1},         {"1.1 mm", 1.1},    {"20 SWG", 0.9144},
                     {"20SWG", 0.9144},    {"20 US", 0.91186}, {"36 thou", 0.9144},
                     {".036 in", 0.9144},  {"20 swg", 0.9144}, {"20 us", 0.91186},
                     {"3/64 in", 1.190625}};
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto sheet = parse_sheet_mm(c.text, Units::mm);
    ASSERT_TRUE(sheet.has_value()) << sheet.error().what;
    EXPECT_NEAR(*sheet, c.mm, 1e-9);
  }
}

TEST(Sheet, RefusesABareGauge) {
  const auto sheet = parse_sheet_mm("20 gauge", Units::mm);
  ASSERT_FALSE(sheet.has_value());
  EXPECT_EQ(sheet.error().what, "a gauge number means nothing without its scale");
  EXPECT_EQ(sheet.error().allowed, "1.1 mm, 20 SWG, 20 US");
  EXPECT_EQ(sheet.error().cure,
            "write 20 SWG (0.914 mm) or 20 US (0.912 mm), or the thickness in mm");
  EXPECT_EQ(sheet.error().offset, 3);
  for (const char* text : {"20 ga", "20g", "20 Gauge", "99 gauge", "20.5 gauge"})
    EXPECT_FALSE(parse_sheet_mm(text, Units::mm).has_value()) << text;
}

TEST(Sheet, ReadingsTakeGaugesToo) {
  EXPECT_EQ(*parse_sheets_mm("18 SWG", Units::mm), std::vector<double>{.048 * 25.4});
  EXPECT_EQ(*parse_sheets_mm("18 20 SWG", Units::mm),
            (std::vector<double>{.048 * 25.4, .036 * 25.4}));
  EXPECT_EQ(*parse_sheets_mm(".81 .78 mm", Units::mm), (std::vector<double>{.81, .78}));
  struct {
    std::string text, what, allowed, cure;
    int offset;
  } const cases[] = {
      {"18 gauge", "a gauge number means nothing without its scale", "1.1 mm, 20 SWG, 20 US",
       "write 18 SWG (1.219 mm) or 18 US (1.214 mm), or the thickness in mm", 3},
      {"18 20 gauge", "a gauge number means nothing without its scale", "1.1 mm, 20 SWG, 20 US",
       "write the scale, SWG or US, or the thickness in mm", 6},
      {"18 27 SWG", "the SWG scale has no such gauge here", "10 to 26 SWG; 10 to 24, 26 and 28 US",
       "write the thickness in mm", 3},
      {"18 SWG 20 SWG", "\"SWG 20 SWG\" is no unit of length", "mm, um, cm, m, in, thou, ft", "",
       3},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto sheets = parse_sheets_mm(c.text, Units::mm);
    ASSERT_FALSE(sheets.has_value());
    EXPECT_EQ(sheets.error().what, c.what);
    EXPECT_EQ(sheets.error().allowed, c.allowed);
    EXPECT_EQ(sheets.error().cure, c.cure);
    EXPECT_EQ(sheets.error().offset, c.offset);
  }
}

TEST(Sheet, RefusesGaugesTheScaleLacks) {
  for (const char* text : {"9 SWG", "27 SWG", "25 US", "27 US", "29 US", "20.5 SWG", "1000 US"}) {
    const auto sheet = parse_sheet_mm(text, Units::mm);
    ASSERT_FALSE(sheet.has_value()) << text;
    EXPECT_EQ(sheet.error().allowed, "10 to 26 SWG; 10 to 24, 26 and 28 US");
    EXPECT_EQ(sheet.error().cure, "write the thickness in mm");
  }
  EXPECT_FALSE(parse_sheet_mm("0x14", Units::mm).has_value());
  EXPECT_FALSE(parse_sheet_mm("1,1", Units::mm).has_value());
}

}  // namespace
}  // namespace tinworm::quantity
