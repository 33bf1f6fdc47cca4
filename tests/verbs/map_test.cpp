// `map` through the program: colours as the whole program sets them, whatever the
// order its parts were linked in.
#include <regex>
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

// Colours of the strokes of a width in an SVG, each after a space.
std::string stroke_colours(const std::string& svg, const std::string& width_pt) {
  const std::regex stroke("stroke-width:" + width_pt + R"(;[^"]*stroke:(#[0-9a-f]{6}))");
  std::string all;
  for (std::sregex_iterator found(svg.begin(), svg.end(), stroke), end; found != end; ++found)
    all += " " + (*found)[1].str();
  return all;
}

// A swatch's edge of 0.4 pt is the palette's ink; textures, which may be black, have other widths.
TEST(Map, KeyEdgesAreOfThePalette) {
  const Workshop workshop;
  const Ended ended =
      workshop.run("map good.yaml --panels panels --page structure -o map.svg 2>/dev/null");
  ASSERT_EQ(ended.status, 0);
  const std::string colours = stroke_colours(workshop.text("map.svg"), "0\\.4");
  EXPECT_THAT(colours, testing::HasSubstr("#181614"));
  EXPECT_THAT(colours, testing::Not(testing::HasSubstr("#000000")));
}

}  // namespace
}  // namespace tinworm::verbs
