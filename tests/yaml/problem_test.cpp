#include "yaml/problem.hpp"

#include <gtest/gtest.h>

namespace tinworm::yaml {
namespace {

TEST(ToText, SaysWhatWhereFoundAllowedAndCure) {
  EXPECT_EQ(to_text({{{2, 3},
                      "the role is not known",
                      "mian",
                      "main, local, skin",
                      "did you mean \"main\"?"}},
                    "plan.yaml", "a: 1\nb: mian\n"),
            "plan.yaml:2:3: the role is not known (found \"mian\"; allowed: main, local, skin; did "
            "you mean \"main\"?)\n"
            "b: mian\n"
            "  ^\n");
}

TEST(ToText, LeavesOutWhatIsEmpty) {
  EXPECT_EQ(to_text({{{}, "the file is empty", "", "", ""}}, "f", ""), "f: the file is empty\n");
}

TEST(ToText, IsInOrderOfPlaceWithTheWholeFileFirstAndRepeatsOnce) {
  EXPECT_EQ(to_text({{{2, 1}, "second", "", "", ""},
                     {{1, 2}, "first", "", "", ""},
                     {{}, "whole", "", "", ""},
                     {{2, 1}, "second", "", "", ""}},
                    "f", "ab\ncd\n"),
            "f: whole\nf:1:2: first\nab\n ^\nf:2:1: second\ncd\n^\n");
}

TEST(ToText, StopsAtMost) {
  const Problems problems(7, {{}, "same", "", "", ""});
  Problems different;
  for (int i = 1; i <= 7; ++i) different.push_back({{1, i}, "no", "", "", ""});
  EXPECT_EQ(to_text(problems, "f", ""), "f: same\n");
  EXPECT_EQ(to_text(different, "f", "", 2), "f:1:1: no\nf:1:2: no\nand 5 more: --all lists them\n");
  EXPECT_EQ(to_text(different, "f", "", 7).find("more"), std::string::npos);
}

TEST(ToText, PutsTheCaretUnderTheCharacter) {
  struct {
    std::string_view source;
    Place place;
    std::string_view picture;
  } const cases[] = {
      {"é€: x", {1, 5}, "é€: x\n    ^\n"},
      {"\ta:\tb", {1, 5}, "\ta:\tb\n\t  \t^\n"},
      {"ab", {1, 9}, "ab\n  ^\n"},
      {"ab\r\ncd\r\n", {2, 2}, "cd\n ^\n"},
      {"\xEF\xBB\xBF"
       "ab",
       {1, 2},
       "ab\n ^\n"},
      {"a\x1b[2Jb", {1, 1}, "a\xEF\xBF\xBD[2Jb\n^\n"},
      {"ab", {7, 1}, ""},
  };
  for (const auto& [source, place, picture] : cases) {
    const std::string text = to_text({{place, "no", "", "", ""}}, "f", source);
    EXPECT_EQ(text.substr(text.find('\n') + 1), picture) << source;
  }
}

TEST(ToText, CutsLongLinesRoundTheCaret) {
  const std::string source = std::string(150, 'a') + "B" + std::string(150, 'c');
  EXPECT_EQ(to_text({{{1, 151}, "no", "", "", ""}}, "f", source),
            "f:1:151: no\n…" + std::string(60, 'a') + "B" + std::string(39, 'c') + "…\n" +
                std::string(61, ' ') + "^\n");
  EXPECT_EQ(to_text({{{1, 2}, "no", "", "", ""}}, "f", source),
            "f:1:2: no\n" + std::string(100, 'a') + "…\n ^\n");
}

TEST(ToText, CutsAndCleansWhatWasFound) {
  EXPECT_EQ(to_text({{{}, "no", std::string(70, 'x'), "", ""}}, "f", ""),
            "f: no (found \"" + std::string(60, 'x') + "…\")\n");
  EXPECT_EQ(to_text({{{}, "no", "a\x1b\n\xff", "", ""}}, "f", ""),
            "f: no (found \"a\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD\")\n");
}

}  // namespace
}  // namespace tinworm::yaml
