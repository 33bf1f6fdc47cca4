#include <gtest/gtest.h>

#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

// The place of the first `x` in the only value.
TEST(PlaceInside, FindsTheCharacterInAnyKindOfText) {
  struct {
    std::string_view source;
    Place place;
  } const cases[] = {
      {"a: M 1 x", {1, 8}},
      {"a: \"M 1 x\"", {1, 9}},
      {"a: 'M 1 x'", {1, 9}},
      {"a: 'é€ x'", {1, 8}},
      {"a: M 1\n   x 2", {2, 4}},
      {"a: \"M 1\r\n  x 2\"", {2, 3}},
      {"a: >-\n  M 1\n  L x\n", {3, 5}},
      {"a: |\n  M 1\n  L x\n", {3, 5}},
      {"\xEF\xBB\xBF"
       "a: M x",
       {1, 6}},
      {"a: \"\\u004D x\"", {1, 4}},  // an escape: the whole text
      {"a: 'o''x'", {1, 8}},
  };
  for (const auto& [source, place] : cases) {
    const auto node = parse(source);
    ASSERT_TRUE(node) << source;
    const Node& value = node->entries.at(0).value;
    EXPECT_EQ(place_inside(value, value.text.find('x'), source), place) << source;
  }
}

}  // namespace
}  // namespace tinworm::yaml
