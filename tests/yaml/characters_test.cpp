// Which characters no text may hold, and how a file's name is made safe to show.
#include "yaml/characters.hpp"

#include <gtest/gtest.h>

namespace tinworm::yaml {
namespace {

TEST(Characters, ThatNoTextMayHold) {
  const struct {
    std::string_view what;
    std::vector<char32_t> codes;
  } cases[] = {
      {"an invisible control character",
       {0, 1, 8, 0xB, '\r', 0x1B, 0x1F, 0x7F, 0x80, 0x85, 0x9B, 0x9F, 0x2028, 0x2029}},
      {"a code that is no character",
       {0xFDD0, 0xFDEF, 0xFFFE, 0xFFFF, 0x1FFFE, 0x1FFFF, 0x2FFFE, 0xFFFFE, 0x10FFFE, 0x10FFFF}},
      {"an invisible byte order mark", {0xFEFF}},
      {"an invisible mark that turns the direction of writing",
       {0x061C, 0x200E, 0x200F, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2069}},
      {"an invisible tag character", {0xE0000, 0xE0001, 0xE0041, 0xE007F}},
      {"an invisible character without width",
       {0xAD, 0x34F, 0x115F, 0x180E, 0x200B, 0x200C, 0x200D, 0x2060, 0x2064, 0x206A, 0x3164, 0xFFA0,
        0xFFF9, 0x1D173}},
      {"", {'\t',   '\n',   ' ',    '~',     0xA0,    0xAE,    0xE9,   0x300,  0x5D0,
            0x627,  0x0915, 0x2010, 0x2027,  0x202F,  0x2030,  0x20AC, 0xFDCF, 0xFDF0,
            0xFE0F, 0xFFFC, 0xFFFD, 0x10000, 0x1F697, 0x1FFFD, 0xE0100}},
  };
  for (const auto& [what, codes] : cases)
    for (const char32_t code : codes) EXPECT_EQ(unfit(code), what) << code_name(code);
}

TEST(Characters, OfNamesAreShownAndWorkNoTerminal) {
  const struct {
    std::string_view name, shown;
  } cases[] = {
      {"wherry-2025.yaml", "wherry-2025.yaml"},
      {"été 2025 €.yaml", "été 2025 €.yaml"},
      {"a b'\"\\x.yaml", "a b'\"\\x.yaml"},
      {"red\x1b[31m.yaml", "red\\x1b[31m.yaml"},
      {"bell\a del\x7f csi\xC2\x9B", "bell\\x07 del\\x7f csi\\x9b"},
      {"two\nlines\tand\r", "two\\nlines\\tand\\r"},
      {"latin\xE9", "latin\\xe9"},
      {"cut\xE2\x80", "cut\\xe2\\x80"},
      {"fdp.\u202Ereport", "fdp.\\u202ereport"},
      {"zero\u200Bwidth\uFEFF", "zero\\u200bwidth\\ufeff"},
      {"tag\U000E0041", "tag\\U000e0041"},
      {"", ""},
  };
  for (const auto& [name, expected] : cases) EXPECT_EQ(shown(name), expected);
}

TEST(Characters, OfSeveralLinesKeepTheirLines) {
  EXPECT_EQ(shown_lines("a\x1b[2J\n\tb\r\n"), "a\\x1b[2J\n\tb\\r\n");
  EXPECT_EQ(shown_lines(""), "");
  EXPECT_EQ(shown_lines("\n\n"), "\n\n");
}

TEST(Characters, AreFoundInEachLineOnce) {
  const Problems found = bad_characters("a\u202Eb\u202E\nplain\r\n\u200B\u200B\n");
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].place, (Place{1, 2}));
  EXPECT_EQ(found[1].place, (Place{3, 1}));
  EXPECT_TRUE(bad_characters("a: b\r\n\t# é €\n").empty());
}

TEST(Characters, OfOtherEncodingsStandAlone) {
  using namespace std::string_view_literals;
  const struct {
    std::string_view source, what;
  } cases[] = {
      {"\xFF\xFE\0\0s\0\0\0"sv, "the file is UTF-32, which is not read"},
      {"\0\0\xFE\xFF\0\0\0s"sv, "the file is UTF-32, which is not read"},
      {"s\0\0\0u\0\0\0"sv, "the file is UTF-32, which is not read"},
      {"\0\0\0s\0\0\0u"sv, "the file is UTF-32, which is not read"},
      {"\xFF\xFEs\0"sv, "the file is UTF-16, which is not read"},
      {"s\0u\0"sv, "the file is UTF-16, which is not read"},
      {"a\u202E\0"sv, "a NUL byte stands here, so this is no text file"},
      {"a\u202E\xE9"sv, "the byte 0xE9 is not UTF-8 text"},
  };
  for (const auto& [source, what] : cases) {
    const Problems found = bad_characters(source);
    ASSERT_EQ(found.size(), 1u) << what;
    EXPECT_EQ(found.front().what, what);
  }
}

}  // namespace
}  // namespace tinworm::yaml
