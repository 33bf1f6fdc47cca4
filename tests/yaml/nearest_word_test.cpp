#include <gtest/gtest.h>

#include "yaml/problem.hpp"

namespace tinworm::yaml {
namespace {

TEST(NearestWord, TakesSlipsOfTheKeyboardOnly) {
  const std::vector<std::string> words{"pitting", "surface", "scale", "edge", "contact", "none"};
  struct {
    std::string_view word, nearest;
  } const cases[] = {
      {"piting", "pitting"},
      {"pittign", "pitting"},
      {"Pitting", "pitting"},
      {"SURFACE", "surface"},
      {"scael", "scale"},
      {"sclae", "scale"},
      {"egde", "edge"},
      {"ede", "edge"},
      {"edges", "edge"},
      {"sufrcae", "surface"},
      {"surf", ""},
      {"contakkt", "contact"},
      {"rust", ""},
      {"", ""},
      {"x", ""},
      {"nnone", "none"},
      {"no", ""},
      {"hole", ""},
  };
  for (const auto& [word, nearest] : cases) EXPECT_EQ(nearest_word(word, words), nearest) << word;
}

TEST(NearestWord, CountsCharactersAndPrefersTheFirstOfEquals) {
  EXPECT_EQ(nearest_word("tôle", {"tole"}), "tole");
  EXPECT_EQ(nearest_word("cat", {"bat", "hat"}), "bat");
  EXPECT_EQ(nearest_word("abcdefghijkl", {"abcdefgh"}), "");  // four edits
  EXPECT_EQ(nearest_word("anything", {}), "");
  EXPECT_EQ(nearest_word(std::string(100'000, 'a'), {"a"}), "");
}

TEST(DidYouMean, AsksOrKeepsSilent) {
  EXPECT_EQ(did_you_mean("piting", {"pitting"}), "did you mean \"pitting\"?");
  EXPECT_EQ(did_you_mean("zebra", {"pitting"}), "");
}

}  // namespace
}  // namespace tinworm::yaml
