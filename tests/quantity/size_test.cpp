#include <gtest/gtest.h>

#include "quantity/length.hpp"

namespace tinworm::quantity {
namespace {

struct Read {
  std::string text;
  Units units;
  Size size;
};

TEST(Size, IsTwoFiguresOrALength) {
  const Read cases[] = {
      {"300x120 mm", Units::mm, {300, 120}},      {"300x120", Units::mm, {300, 120}},
      {"300 x 120 mm", Units::mm, {300, 120}},    {"300X120", Units::mm, {300, 120}},
      {"300×120", Units::mm, {300, 120}},         {"300*120", Units::mm, {300, 120}},
      {"300 mm x 120 mm", Units::mm, {300, 120}}, {"250", Units::mm, {250, 25, false}},
      {"4 cm", Units::mm, {40, 25, false}},       {"10", Units::inch, {254, 25, false}},
      {"2x1", Units::inch, {50.8, 25.4}},         {"2x1 mm", Units::inch, {2, 1}},
      {"14.5x9", Units::mm, {14.5, 9}},           {"3\" x 1\"", Units::mm, {76.2, 25.4}},
      {"3″×1 in", Units::mm, {76.2, 25.4}},       {"1/2\" x 3/4\"", Units::mm, {12.7, 19.05}},
      {"4 1/2 x 3 in", Units::mm, {114.3, 76.2}}, {"4-1/2 x 3", Units::inch, {114.3, 76.2}},
  };
  for (const Read& c : cases) {
    SCOPED_TRACE(c.text);
    const auto size = parse_size(c.text, c.units);
    ASSERT_TRUE(size.has_value()) << size.error().what;
    EXPECT_NEAR(size->along_mm, c.size.along_mm, 1e-9);
    EXPECT_NEAR(size->across_mm, c.size.across_mm, 1e-9);
    EXPECT_EQ(size->across_known, c.size.across_known);
  }
}

TEST(Size, OfAHoleIsRoundWhereOneFigureStands) {
  EXPECT_EQ(*parse_hole("20", Units::mm), (Size{20, 20}));
  EXPECT_EQ(*parse_hole("14x9", Units::mm), (Size{14, 9}));
  EXPECT_EQ(*parse_hole("1/2\"", Units::mm), (Size{12.7, 12.7}));
}

TEST(Size, IsRefusedWhereItIsBroken) {
  struct {
    std::string text, what, cure;
    int offset;
  } const cases[] = {
      {"300x", "a number is missing", "", 4},
      {"x120", "\"x120\" is not a number", "", 0},
      {"300x120x4", "a size has two figures", "", 7},
      {"3\" x 1\" x 2\"", "a size has two figures", "", 8},
      {"300 mm x 120", "the unit of a size stands at its end, or after both figures",
       "write 300 mm x 120 mm if both are meant", 4},
      {"3 in x 120 mm", "the two figures of a size have one unit", "write both in the same", 2},
      {"3 yd x 1 yd", "\"yd\" is no unit of length", "", 2},
      {"3x1 yd", "\"yd\" is no unit of length", "", 4},
      {"1/2 x 3/4", "a fraction is of an inch", "write 1/2 in, or decimals", 0},
      {"1/2 x 20 mm", "a fraction is of an inch", "write decimals: 0.5 mm", 0},
      {"300x-120", "a number here has no sign", "", 4},
      {"300x0120", "a number starts with 0 only before its point", "write 120", 4},
      {"300 120", "two numbers where one is meant", "", 4},
      {"300x120 40", "two numbers where one is meant", "", 8},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    for (const auto read : {parse_size, parse_hole}) {
      const auto size = read(c.text, Units::mm);
      ASSERT_FALSE(size.has_value());
      EXPECT_EQ(size.error().what, c.what);
      EXPECT_EQ(size.error().cure, c.cure);
      EXPECT_EQ(size.error().offset, c.offset);
    }
  }
}

}  // namespace
}  // namespace tinworm::quantity
