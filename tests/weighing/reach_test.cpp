// How far the structure burden could move, on the body of seven zones: weights add to 5.5.
#include "weighing/reach.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

Result with_hidden(const std::vector<int>& zones) {
  survey::Survey survey = fixture::sound_survey();
  for (const int zone : zones) {
    survey.seen[zone] = {survey::SeenWord::hidden, 0, "underseal", {}};
    survey.zones.erase(zone);
  }
  return weigh(survey, {});
}

const OpenUp& opening(const Result& result, int zone) {
  return *std::ranges::find(result.open_up, zone, &OpenUp::zone);
}

// Rusted away, the hanger alone counts 1 of 5.5. Found sound like the rest, each zone is bare with
// nothing recorded: metal of .95 at the least, damage .10, spread .4: .04.
TEST(Reach, OfOneHiddenHanger) {
  const Result result = with_hidden({61});
  const OpenUp& hanger = opening(result, 61);
  EXPECT_NEAR(hanger.structure_low_if_gone, std::pow(1 / 5.5, 1 / 6.0), 1e-12);
  EXPECT_NEAR(hanger.structure_low_if_gone, result.one_zone_gone, 1e-12);
  EXPECT_NEAR(hanger.structure_high_if_no_worse, .04, 1e-12);
  EXPECT_GT(result.structure.high, .2);
}

TEST(Reach, WhatIsFoundStaysAtItsLikelyFigure) {
  survey::Survey survey = fixture::sound_survey();
  survey::Spot judged;
  judged.name = "end";
  judged.rust = survey::Rust::scale;  // .50 .70 .90: damage .492857 likely, .75 at worst
  survey.zones[61].found = {judged};
  const Result result = weigh(survey, {});
  const OpenUp& hanger = opening(result, 61);
  const double likely = .30 + .45 * (.85 - .70) / .35;
  EXPECT_NEAR(hanger.structure_high_if_no_worse,
              std::pow((std::pow(likely, 6) + 4.5 * std::pow(.04, 6)) / 5.5, 1 / 6.0), 1e-9);
  EXPECT_LT(hanger.structure_high_if_no_worse, result.structure.high);
}

TEST(Reach, StaysWithinTheRangeAndPutsFirstWhatMovesItMost) {
  const Result result = with_hidden({11, 51, 52, 61, 62});
  ASSERT_GE(result.open_up.size(), 5u);
  for (std::size_t i = 0; i < result.open_up.size(); ++i) {
    const OpenUp& open = result.open_up[i];
    EXPECT_LE(open.structure_high_if_no_worse, result.structure.high);
    EXPECT_GE(open.structure_low_if_gone, result.structure.low);
    if (i == 0) continue;
    const OpenUp& before = result.open_up[i - 1];
    EXPECT_GE(before.could_become, open.could_become);
    if (before.could_become != open.could_become) continue;
    EXPECT_LE(before.structure_high_if_no_worse - before.structure_low_if_gone,
              open.structure_high_if_no_worse - open.structure_low_if_gone);
  }
}

}  // namespace
}  // namespace tinworm::weighing
