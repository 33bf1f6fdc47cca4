#include "survey/free_words.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tinworm::survey {
namespace {

using testing::ElementsAre;

TEST(FreeWords, AreLettersAndDigitsInSmallLetters) {
  EXPECT_THAT(words_in("Rear end, 2nd"), ElementsAre("rear", "end", "2nd"));
  EXPECT_THAT(words_in("  Rost-Öl: WACHS"), ElementsAre("rost", "Öl", "wachs"));
  EXPECT_THAT(words_in(""), ElementsAre());
}

TEST(MeantName, FindsSlipsAndKeepsPlacesApart) {
  const std::vector<std::string> names = {"rear end", "upper end", "hole 1", "middle"};
  const struct {
    const char *name, *meant;
  } cases[] = {
      {"midle", "middle"},      {"Middle", "middle"},
      {"rera end", "rear end"}, {"middle", ""},
      {"hole 2", ""},           {"lower end", ""},
      {"jacking point", ""},    {"upper  end", "upper end"},
      {"hole l", "hole 1"},
  };
  for (const auto& c : cases) EXPECT_EQ(meant_name(c.name, names), c.meant) << c.name;
}

}  // namespace
}  // namespace tinworm::survey
