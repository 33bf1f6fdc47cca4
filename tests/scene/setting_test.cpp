#include "scene/setting.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tinworm::scene {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

// Every letter is 1 mm wide.
Extent one_mm_each(std::string_view text, Font, double) {
  double letters = 0;
  for (const char byte : text) letters += (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
  return {letters, 1, 0.3};
}

TEST(Setting, Wrap) {
  const Style style;
  EXPECT_THAT(wrap("", style, 10, one_mm_each), IsEmpty());
  EXPECT_THAT(wrap("rear floor", style, 10, one_mm_each), ElementsAre("rear floor"));
  EXPECT_THAT(wrap("rear floor, left", style, 11, one_mm_each), ElementsAre("rear floor,", "left"));
  EXPECT_THAT(wrap("one  two", style, 4, one_mm_each), ElementsAre("one", "two"));
  EXPECT_THAT(wrap("cross-member", style, 8, one_mm_each), ElementsAre("cross-", "member"));
  EXPECT_THAT(wrap("unbreakable", style, 5, one_mm_each), ElementsAre("unbre", "akabl", "e"));
  EXPECT_THAT(wrap("\u00e9\u00e9\u00e9\u00e9", style, 3, one_mm_each),
              ElementsAre("\u00e9\u00e9\u00e9", "\u00e9"));
}

TEST(Setting, FiguresStayWithTheirUnitsAndDatesWhole) {
  const std::string lost = "sill: 0.12\u00a0mm\u00a0lost";
  EXPECT_THAT(wrap(lost, {}, 17, one_mm_each), ElementsAre("sill:", "0.12\u00a0mm\u00a0lost"));
  EXPECT_THAT(wrap("in 2021-04-10", {}, 11, one_mm_each), ElementsAre("in", "2021-04-10"));
  EXPECT_EQ(set("0.12\u00a0mm\u00a0lost", {}, {0, 0}, Align::left, one_mm_each).text,
            "0.12 mm lost");
  EXPECT_EQ(plain_spaces("\u00a0a\u00a0\u00a0b\u00e9"), " a  b\u00e9");
}

TEST(Setting, NoLineIsWiderThanAsked) {
  const std::string text =
      "the seam behind the splash plate, well-known for it, and overlylongwords";
  for (double width = 1; width < 40; ++width) {
    for (const std::string& line : wrap(text, {}, width, one_mm_each)) {
      EXPECT_LE(one_mm_each(line, Font::regular, 7).width_mm, width) << line;
    }
  }
}

TEST(Setting, Cut) {
  EXPECT_EQ(cut("short", {}, 5, one_mm_each), "short");
  EXPECT_EQ(cut("longer words", {}, 8, one_mm_each), "longer\u2026");
  EXPECT_EQ(cut("\u00e9\u00e9\u00e9\u00e9", {}, 3, one_mm_each), "\u00e9\u00e9\u2026");
  EXPECT_EQ(cut("word", {}, 0.5, one_mm_each), "\u2026");
}

TEST(Setting, BlockKeepsToItsLines) {
  Layer layer;
  const Style style{10, Font::regular, black, Says::words, 1.2};
  const double height = set_block(layer, "one two three four", style, {5, 7}, 5, one_mm_each, 2);
  ASSERT_EQ(layer.items.size(), 2U);
  EXPECT_NEAR(height, 2 * 12 * mm_per_pt, 1e-9);
  EXPECT_EQ(std::get<Text>(layer.items[1]).text, "two \u2026");
  EXPECT_EQ(std::get<Text>(layer.items[0]).at.x_mm, 5);
}

}  // namespace
}  // namespace tinworm::scene
