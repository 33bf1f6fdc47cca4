#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using survey::Hand;
using survey::Rust;

// A sill of two layers, worked by hand: outer 51, three faces of 100, 200 and 100 mm, sheet 1.0;
// inner 53, one face of 200 mm, sheet 1.5. Wall metal 400 + 300 = 700 mm².
survey::Survey sill() {
  body::Plan plan = fixture::plan();
  const geometry::Box3 outer{{400, 1400}, {-750, -650}, {100, 300}};
  plan.zones = {
      fixture::zone(51, "outer sill", body::Role::main, body::Build::single, outer, 1.0, .4),
      fixture::zone(53, "inner sill", body::Role::main, body::Build::single,
                    {{400, 1400}, {-650, -650}, {100, 300}}, 1.5, .2)};
  plan.mounts.clear();
  body::Box box;
  box.name = "sill";
  box.from_mm = 400;
  box.to_mm = 1400;
  box.points = {{"a", {-650, 100}}, {"b", {-750, 100}}, {"c", {-750, 300}}, {"d", {-650, 300}}};
  box.walls = {{"a b c d", 51, {}}, {"a d", 53, {}}};
  plan.boxes = {box};
  return fixture::sound_survey(plan);
}

survey::Spot hole(double across_mm) {
  survey::Spot spot = fixture::placed("h", Rust::scale, {900, -750, 200}, {260, across_mm});
  spot.hole = survey::Size{200, across_mm};
  spot.hand = Hand::firm;
  return spot;
}

const SectionLeft& section(const Result& result) {
  return *result.boxes.front().section;
}

TEST(Section, OneLayerHoledLeavesTheRest) {
  survey::Survey survey = sill();
  survey.zones[51].found = {hole(140)};  // 140 x 1.0 of 700: .80 left
  const Result result = weigh(survey, {});
  EXPECT_NEAR(section(result).left.value, .80, 1e-9);
  EXPECT_EQ(section(result).from_mm, 800);
  EXPECT_EQ(section(result).to_mm, 1000);
  EXPECT_EQ(section(result).walls[0].gone_mm, 140);
  EXPECT_FALSE(section(result).gone);
  EXPECT_EQ(result.verdict, Verdict::mend);
}

TEST(Section, WiderThanItsFaceRunsRoundTheCornersHalfEachWay) {
  survey::Survey survey = sill();
  survey.zones[51].found = {hole(300)};  // 200 and 50 round either corner: 300 of 700 gone
  const Result result = weigh(survey, {});
  EXPECT_NEAR(section(result).left.value, 400 / 700.0, 1e-9);
  EXPECT_TRUE(section(result).gone);
  EXPECT_EQ(result.verdict, Verdict::keep_parked);
  EXPECT_EQ(result.reasons.front().rule, "section-gone");
  EXPECT_EQ(result.zone(51)->spots.front().weight.value, 1) << "nothing left, as main structure";
}

TEST(Section, AValueOnTheLimitStands) {
  survey::Survey survey = sill();
  survey.zones[51].found = {hole(175)};  // 175 of 700: .75
  EXPECT_FALSE(section(weigh(survey, {})).gone);
  survey.zones[51].found = {hole(176)};
  EXPECT_TRUE(section(weigh(survey, {})).gone);
}

TEST(Section, EveryLayerGoneNearOnePlace) {
  survey::Survey survey = sill();
  survey.zones[51].found = {hole(50)};
  survey::Spot inner = fixture::placed("i", Rust::scale, {1150, -650, 200}, {50, 50});
  inner.hand = Hand::gives;
  survey.zones[53].found = {inner};
  const Result near = weigh(survey, {});
  EXPECT_TRUE(section(near).all_layers);
  EXPECT_EQ(near.verdict, Verdict::keep_parked);
  survey.zones[53].found[0].at.x_mm = 1250;
  EXPECT_FALSE(section(weigh(survey, {})).all_layers) << "195 mm apart";
}

TEST(Section, ThinButFirmCountsWhole) {
  survey::Survey survey = sill();
  survey.zones[51].reference_mm = {1, 1, 1};
  survey::Spot thin = fixture::placed("t", Rust::scale, {900, -750, 200}, {900, 200});
  thin.metal_mm = {.6, .6, .6};
  survey.zones[51].found = {thin};
  EXPECT_EQ(section(weigh(survey, {})).left.value, 1);
}

TEST(Section, WhatWasOnlyJudgedOrStuffedReachesTheLowEndAlone) {
  survey::Survey survey = sill();
  survey::Spot stuffed = fixture::placed("s", {}, {900, -750, 200}, {300, 200});
  stuffed.stuffed = survey::Stuffed::foam;
  survey.zones[51].found = {stuffed};
  const SectionLeft left = section(weigh(survey, {}));
  EXPECT_EQ(left.left.value, 1);
  EXPECT_NEAR(left.left.low, 500 / 700.0, 1e-9);
  EXPECT_FALSE(left.gone);
  EXPECT_TRUE(left.may_go);
}

}  // namespace
}  // namespace tinworm::weighing
