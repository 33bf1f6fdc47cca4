// That an SVG is small and its words are words.
#include "painting/svg_text.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "painting/measure.hpp"
#include "painting/picture.hpp"
#include "painting/simplified.hpp"
#include "painting/svg_numbers.hpp"
#include "scene/fixture.hpp"
#include "scene/setting.hpp"

namespace tinworm::painting {
namespace {

using scene::At;
using scene::Polyline;
using testing::HasSubstr;
using testing::Not;

double distance_mm(At at, At from, At to) {
  const double dx = to.x_mm - from.x_mm, dy = to.y_mm - from.y_mm;
  const double length2 = dx * dx + dy * dy;
  const double along =
      length2 > 0 ? ((at.x_mm - from.x_mm) * dx + (at.y_mm - from.y_mm) * dy) / length2 : 0;
  const double t = std::min(1.0, std::max(0.0, along));
  return std::hypot(at.x_mm - from.x_mm - t * dx, at.y_mm - from.y_mm - t * dy);
}

double farthest_mm(const Polyline& old, const Polyline& line) {
  double most = 0;
  const std::size_t count = line.points.size();
  for (const At at : old.points) {
    double least = 1e9;
    for (std::size_t i = 0; i + (line.closed ? 0 : 1) < count; ++i)
      least = std::min(least, distance_mm(at, line.points[i], line.points[(i + 1) % count]));
    most = std::max(most, least);
  }
  return most;
}

TEST(Simplified, NoPointIsFurtherOffThanAllowed) {
  for (const double radius_mm : {0.5, 3.0, 20.0}) {
    const Polyline old = scene::circle({40, 30}, radius_mm, 400);
    const Polyline line = simplified(old);
    EXPECT_TRUE(line.closed);
    EXPECT_LT(line.points.size(), old.points.size() / 3);
    EXPECT_LE(farthest_mm(old, line), simplified_to_mm);
  }
  const Polyline bent{{{0, 0}, {1, 0.001}, {2, 0}, {3, 0.5}, {4, 0}}, false};
  const Polyline line = simplified(bent);
  EXPECT_EQ(line.points, (std::vector<At>{{0, 0}, {2, 0}, {3, 0.5}, {4, 0}}));
  EXPECT_EQ(simplified(Polyline{{{1, 1}, {2, 2}}, false}).points.size(), 2u);
  EXPECT_TRUE(simplified(Polyline{{}, true}).points.empty());
}

TEST(BriefSvg, SaysTheSameBriefly) {
  EXPECT_EQ(
      brief_svg("<path style=\"fill:none;stroke-width:0.4;stroke-linecap:butt;stroke:"
                "rgb(100%,50%,0%);stroke-opacity:1;\" d=\"M 1.234567 -2 L 3.5 4 Z M 1 -2\"/>"),
      "<path style=\"stroke-width:0.4;stroke-linecap:butt;stroke:#ff7f00\" "
      "d=\"M1.23 -2L3.5 4Z\"/>");
  EXPECT_EQ(brief_svg("<svg a=\"1\"><desc>stroke:none; 1.23456</desc></svg>"),
            "<svg fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\" a=\"1\">"
            "<desc>stroke:none; 1.23456</desc></svg>");
}

scene::Page page_saying(const std::string& words) {
  scene::Page page;
  page.layer("words").items.push_back(
      scene::set(words, {7, scene::Font::regular}, {20, 20}, scene::Align::left, measure()));
  return page;
}

TEST(SvgText, WordsAreWords) {
  const std::string text = svg_text(page_saying("sills & arches < 79 %"));
  EXPECT_THAT(text, HasSubstr(">sills &amp; arches &lt; 79 %</text>"));
  EXPECT_THAT(text, HasSubstr("font-family=\"sheet, 'DejaVu Sans', sans-serif\""));
  EXPECT_THAT(text, HasSubstr("src:url(data:font/ttf;base64,"));
  EXPECT_EQ(svg_text(scene::Page{}), "");
}

TEST(SvgText, TheSheetsAreSmallAndTheirWordsAreFound) {
  constexpr std::size_t most_svg = 400'000, most_pdf = 150'000;
  const auto result = scene::fixture::weighed(scene::fixture::busy_survey(scene::fixture::plan()));
  const auto pages = scene::diagram(result, {}, measure());
  Metadata metadata;
  metadata.title = "Wherry 1200";
  metadata.date = "2025-04-12T00:00:00Z";
  for (std::size_t i = 0; i < 2; ++i) {
    const std::string svg = to_svg(pages[i], metadata);
    EXPECT_LT(svg.size(), most_svg) << pages[i].title;
    EXPECT_THAT(svg, HasSubstr(">Key</text>"));
    EXPECT_THAT(svg, Not(HasSubstr("<symbol")));
  }
  EXPECT_LT(to_pdf({pages[0], pages[1]}, metadata).size(), most_pdf);
}

}  // namespace
}  // namespace tinworm::painting
