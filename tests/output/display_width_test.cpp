#include "output/display_width.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tinworm::output {
namespace {

using testing::ElementsAre;

TEST(DisplayWidth, CountsColumnsNotBytes) {
  struct {
    std::string_view text;
    int columns;
  } const cases[] = {{"", 0},   {"sill", 4},   {"é–m²", 4}, {"e\u0301", 1}, {"日本", 4},
                     {"🚗", 2}, {"\u200b", 0}, {"\xff", 1}, {"\xe2\x82", 2}};
  for (const auto& [text, columns] : cases) EXPECT_EQ(display_width(text), columns) << text;
}

TEST(Wrapped, BreaksAtSpacesAndCutsWhatIsTooLong) {
  EXPECT_THAT(wrapped("", 10), ElementsAre(""));
  EXPECT_THAT(wrapped("rear end of the sill", 10), ElementsAre("rear end", "of the", "sill"));
  EXPECT_THAT(wrapped("exactly ten", 11), ElementsAre("exactly ten"));
  EXPECT_THAT(wrapped("abcdefgh ij", 4), ElementsAre("abcd", "efgh", "ij"));
  EXPECT_THAT(wrapped("a abcdefgh", 4), ElementsAre("a", "abcd", "efgh"));
  EXPECT_THAT(wrapped("ééé ééé", 3), ElementsAre("ééé", "ééé"));
  EXPECT_THAT(wrapped("one\ntwo  three", 20), ElementsAre("one", "two three"));
  EXPECT_THAT(wrapped("ab", 0), ElementsAre("a", "b"));
}

TEST(Indented, HangsTheOtherLines) {
  EXPECT_EQ(indented("one two three", 9, "- ", "  "), "- one two\n  three\n");
}

}  // namespace
}  // namespace tinworm::output
