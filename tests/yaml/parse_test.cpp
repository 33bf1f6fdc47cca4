#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>

#include <fmt/format.h>

#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

using testing::HasSubstr;

// The tree in one line: scalars bare or in quotes, places after @.
std::string shape(const Node& node, bool places = false) {
  std::string out;
  switch (node.kind) {
    case Node::Kind::empty:
      out = "nothing";
      break;
    case Node::Kind::scalar:
      out = node.quoted ? "\"" + node.text + "\"" : node.text;
      break;
    case Node::Kind::sequence:
      for (const Node& item : node.items) out += (out.empty() ? "" : ", ") + shape(item, places);
      out = "[" + out + "]";
      break;
    case Node::Kind::map:
      for (const Entry& entry : node.entries) {
        out += (out.empty() ? "" : ", ") + entry.key;
        if (places) out += fmt::format("@{}:{}", entry.key_place.line, entry.key_place.column);
        out += ": " + shape(entry.value, places);
      }
      out = "{" + out + "}";
      break;
  }
  if (places) out += fmt::format("@{}:{}", node.place.line, node.place.column);
  return out;
}

struct Good {
  std::string_view what, source, shape;
};

class GoodFiles : public testing::TestWithParam<Good> {};

TEST_P(GoodFiles, AreReadAsWritten) {
  const auto node = parse(GetParam().source);
  ASSERT_TRUE(node) << to_text(node.error(), "good", GetParam().source);
  EXPECT_EQ(shape(*node), GetParam().shape);
}

INSTANTIATE_TEST_SUITE_P(
    Yaml, GoodFiles,
    testing::Values(
        Good{"numbers stay text", "a: 012\nb: 1e400\nc: .inf\nd: 0x1F\ne: 1_000\n",
             "{a: 012, b: 1e400, c: .inf, d: 0x1F, e: 1_000}"},
        Good{"yes and no stay text", "a: yes\nb: No\nc: true\n", "{a: yes, b: No, c: true}"},
        Good{"quotes are known", "a: \"1\"\nb: '1'\nc: 1\n", "{a: \"1\", b: \"1\", c: 1}"},
        Good{"block text", "a: |\n  one\n  two\nb: >-\n  one\n  two\n",
             "{a: \"one\ntwo\n\", b: \"one two\"}"},
        Good{"nothing", "a:\nb: ~\nc: null\nd: ''\n",
             "{a: nothing, b: nothing, c: nothing, d: \"\"}"},
        Good{"keys of several words", "{71 72: carpet glued down, 33: spare wheel}",
             "{71 72: carpet glued down, 33: spare wheel}"},
        Good{"pair in a list", "- rear end: pitting, firm, 180x60\n- middle: {rust: none}\n",
             "[{rear end: pitting, firm, 180x60}, {middle: {rust: none}}]"},
        Good{"pair in a flow list", "[a: 1, b]", "[{a: 1}, b]"},
        Good{"alias", "a: &x {p: 1}\nb: *x\n", "{a: {p: 1}, b: {p: 1}}"},
        Good{"anchor set twice", "a: &x 1\nb: *x\nc: &x 2\nd: *x\n", "{a: 1, b: 1, c: 2, d: 2}"},
        Good{"byte order mark",
             "\xEF\xBB\xBF"
             "a: 1\n",
             "{a: 1}"},
        Good{"Windows line ends", "a: 1\r\nb:\r\n  - 2\r\n", "{a: 1, b: [2]}"},
        Good{"markers", "%YAML 1.2\n---\na: 1\n...\n", "{a: 1}"},
        Good{"comments", "# one\na: 1  # two\n# three\n", "{a: 1}"},
        Good{"hash and colon inside words", "a: b#c\nb: 12:30\nc: http://x\n",
             "{a: b#c, b: 12:30, c: http://x}"},
        Good{"tab after a colon", "a:\t1\n", "{a: 1}"}, Good{"trailing comma", "[1, 2,]", "[1, 2]"},
        Good{"text over two lines", "a: one\n  two\nb: \"three\n  four\"\n",
             "{a: one two, b: \"three four\"}"},
        Good{"a question mark inside", "a: why?\n", "{a: why?}"},
        Good{"plain scalar", "survey\n", "survey"},
        Good{"quoted merge sign", "\"<<\": 1\n", "{<<: 1}"},
        Good{"accents and emoji", "né: tôle 🚗\n", "{né: tôle 🚗}"},
        Good{"end without line feed", "a: [1]", "{a: [1]}"}));

TEST(Places, CountCharactersFromOne) {
  const auto node = parse("\xEF\xBB\xBFé: {ü: €, x: 1}\nb:\n  - 2\n  -\nc:\nd: 4\n");
  ASSERT_TRUE(node);
  EXPECT_EQ(shape(*node, true),
            "{é@1:1: {ü@1:5: €@1:8, x@1:11: 1@1:14}@1:4, "
            "b@2:1: [2@3:5, nothing@4:4]@3:3, c@5:1: nothing@5:3, d@6:1: 4@6:4}@1:1");
}

TEST(Places, OfAnAliasIsWhereItStands) {
  const auto node = parse("a: &x\n  - 1\nb: *x\n");
  ASSERT_TRUE(node);
  EXPECT_EQ(node->entries[1].value.place, (Place{3, 4}));
  EXPECT_EQ(node->entries[1].value.items[0].place, (Place{2, 5}));
}

TEST(Find, KnowsTheKeys) {
  const auto node = parse("a: 1\nb: 2\n");
  ASSERT_TRUE(node);
  ASSERT_NE(node->find("b"), nullptr);
  EXPECT_EQ(node->find("b")->text, "2");
  EXPECT_EQ(node->find("c"), nullptr);
}

std::string refusal(const std::string& source, const Limits& limits = {}) {
  const auto node = parse(source, limits);
  return node ? "read" : to_text(node.error(), "f", source);
}

TEST(Limits, HoldToTheFigure) {
  EXPECT_EQ(refusal(std::string(64, '[') + std::string(64, ']')), "read");
  EXPECT_THAT(refusal(std::string(65, '[') + std::string(65, ']')), HasSubstr("over 64 deep"));
  EXPECT_EQ(refusal("[1, 2]", {.bytes = 6, .nodes = 3}), "read");
  EXPECT_EQ(refusal("[1, 2]", {.nodes = 2}),
            "f:1:5: the file holds over 2 values, keys counted; this is where the limit is reached "
            "(check that it is the right file, or split it)\n[1, 2]\n    ^\n");
  EXPECT_EQ(refusal("[&a 1, *a]", {.nodes = 3}), "read");
  EXPECT_EQ(refusal("[&a [1, 2], *a]", {.nodes = 5}),
            "f:1:13: with this alias written out the file holds over 5 values "
            "(use fewer aliases (*name), or write out what is meant)\n"
            "[&a [1, 2], *a]\n            ^\n");
}

TEST(Limits, OfSize) {
  EXPECT_EQ(refusal("\"" + std::string((1 << 20) - 2, 'x') + "\""), "read");
  EXPECT_EQ(refusal(std::string(5 << 19, 'x')),
            "f: the file has 2621440 bytes; at most 1048576 are read "
            "(check that it is the right file, or split it)\n");
}

std::string repeated(std::string_view unit, std::size_t bytes) {
  std::string text;
  while (text.size() + unit.size() < bytes) text += unit;
  return text;
}

// Files of 1 MiB made to cost as much as they can. Without the stop at 64 deep, 50,000 brackets
// take libyaml 4 s and its time grows with the square; the bound is generous, for slow machines.
TEST(Limits, KeepHostileFilesShort) {
  std::string indents;
  for (std::size_t i = 0; indents.size() + i + 4 < (1 << 20); ++i)
    indents += std::string(i, ' ') + "k:\n";
  const std::vector<std::string> hostile{
      repeated("[", 1 << 20),    repeated("{", 1 << 20),
      repeated("- ", 1 << 20),   repeated("? ", 1 << 20),
      repeated("[1,", 1 << 20),  repeated("{a: ", 1 << 20),

      repeated("&a [", 1 << 20), repeated("a: 1\n", 1 << 20),
      repeated("*a ", 1 << 20),  repeated("&a1 x\n", 1 << 20),
      repeated("\"", 1 << 20),   "[" + repeated("1,", (1 << 20) - 1) + "]",
      repeated("#\n", 1 << 20),  indents};
  for (const std::string& source : hostile) {
    const auto start = std::chrono::steady_clock::now();
    EXPECT_FALSE(parse(source)) << source.substr(0, 20);
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    EXPECT_LT(taken.count(), 5.0) << source.substr(0, 20);
  }
}

}  // namespace
}  // namespace tinworm::yaml
