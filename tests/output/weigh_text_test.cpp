#include "output/weigh_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "output/display_width.hpp"
#include "output/explain.hpp"
#include "output/fixture.hpp"
#include "output/zone_text.hpp"

namespace tinworm::output {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(WeighText, SaysItAllInOrder) {
  EXPECT_EQ(weigh_text(weighed_car()), "");
}

TEST(WeighText, KeepsToItsWidth) {
  for (const int width : {60, 80, 120}) {
    TextStyle style;
    style.width = width;
    const std::string text = weigh_text(weighed_car(), style);
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t end = text.find('\n', at);
      const std::string line = text.substr(at, end - at);
      // A table is as wide as its columns need; words are broken.
      if (line.find("front spring hanger") == line.npos && line.find("metal left") == line.npos) {
        EXPECT_LE(display_width(line), width) << line;
      }
      at = end + 1;
    }
  }
}

TEST(WeighText, NeverShowsWhatIsPrivateOrABurdensNumber) {
  const std::string text = weigh_text(weighed_car());
  EXPECT_THAT(text, Not(HasSubstr("Private")));
  EXPECT_THAT(text, Not(HasSubstr("W12-004417")));
  EXPECT_THAT(text, Not(HasSubstr("0.83")));
}

TEST(WeighText, IsBoldOnlyWhereAsked) {
  TextStyle bold;
  bold.bold = true;
  EXPECT_THAT(weigh_text(weighed_car()), Not(HasSubstr("\033")));
  EXPECT_THAT(weigh_text(weighed_car(), bold), HasSubstr("\033[1mRepair.\033[0m Could be"));
}

TEST(WeighLine, SaysWhatMatters) {
  EXPECT_THAT(weigh_line(weighed_car()),
              testing::ElementsAre("wherry-2025.yaml", "2025-04-12", "repair", "do-not-drive",
                                   "open up", "64 %", "51 outer sill, left: pitted to thin"));
}

TEST(ExplainZone, GivesTheWholeChain) {
  const weighing::Result result = weighed_car();
  TextStyle inches;
  inches.units = quantity::Units::inch;
  EXPECT_EQ(explain_zone(result, result.zones[0], inches), "");
}

TEST(ExplainZone, SaysWhatWasNotSeen) {
  const weighing::Result result = weighed_car();
  EXPECT_THAT(explain_zone(result, result.zones[1]),
              HasSubstr("  seen: hidden: carpet glued down\n"));
}

TEST(StepText, SpansFromTheUpperToTheLowerEnd) {
  using weighing::Step;
  EXPECT_EQ(step_text(Step::thin, Step::thin, Step::thin), "thin");
  EXPECT_EQ(step_text(Step::film, Step::film, Step::thin), "film to thin");
  EXPECT_EQ(step_text(Step::pitted, Step::film, Step::thin), "film to thin, pitted likely");
}

TEST(ZoneRanges, JoinsRunsOfThreeOrMore) {
  EXPECT_EQ(zone_ranges({}), "");
  EXPECT_EQ(zone_ranges({51}), "51");
  EXPECT_EQ(zone_ranges({44, 41, 43, 42, 51, 52, 70}), "41–44, 51, 52, 70");
}

}  // namespace
}  // namespace tinworm::output
