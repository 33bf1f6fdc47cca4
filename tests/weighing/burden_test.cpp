#include "weighing/burden.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

#include "weighing/fixture.hpp"
#include "weighing/step.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using fixture::placed;
using fixture::spot;
using survey::Rust;
using survey::SeenWord;

TEST(Damage, RunsThroughItsKnots) {
  const struct {
    double metal, damage;
  } cases[] = {{1, 0},         {.975, .05},  {.95, .10}, {.90, .20},  {.85, .30},
               {.80, .364286}, {.675, .525}, {.50, .75}, {.25, .875}, {0, 1}};
  for (const auto& c : cases) EXPECT_NEAR(damage(c.metal, {}), c.damage, 1e-6) << c.metal;
}

TEST(Step, ALimitCountsToItsSoundSide) {
  const struct {
    double metal;
    bool rusted;
    Step step;
  } cases[] = {{1.1, false, Step::sound},   {.95, false, Step::sound}, {.95, true, Step::bloom},
               {.9499, true, Step::pitted}, {.85, true, Step::pitted}, {.8499, true, Step::thin},
               {.50, true, Step::thin},     {.4999, true, Step::weak}, {0, true, Step::weak}};
  for (const auto& c : cases) EXPECT_EQ(step_of(c.metal, c.rusted, {}), c.step) << c.metal;
}

// A sound car: 0, and at the high end every main and local zone at damage(.95) x .4 = .04.
TEST(Burden, OfASoundCarIsNone) {
  const Result result = weigh(fixture::sound_survey(), {});
  EXPECT_EQ(*result.structure.value, 0);
  EXPECT_EQ(result.structure.low, 0);
  EXPECT_NEAR(result.structure.high, .04, 1e-12);
  EXPECT_EQ(*result.skin.value, 0);
  EXPECT_NEAR(result.skin.high, .6 * .04, 1e-12);
  EXPECT_NEAR(result.shell.high, .04 + .2 * .024 * .96, 1e-12);
  EXPECT_EQ(result.verdict, Verdict::leave_alone);
}

// By hand: pitting 180 x 60 on a sill 1000 long, out of reach of the mount: damage .30, f .18,
// D = .30 (.4 + .6 x .18) = .1524; weights 5 main and 1 local of .5: S = .1524 / 5.5^(1/6) =
// .11471.
TEST(Burden, OfOneSpotByHand) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[51].found = {placed("middle", Rust::pitting, {700, -690, 200}, {180, 60})};
  const Result result = weigh(survey, {});
  const Spot& got = result.zone(51)->spots.front();
  EXPECT_EQ(got.near, Near::no);
  EXPECT_NEAR(got.share_of_length, .18, 1e-12);
  EXPECT_NEAR(got.weight.value, .1524, 1e-12);
  EXPECT_NEAR(got.weight.low, .10 * .508, 1e-12);
  EXPECT_NEAR(got.weight.high, damage(.70, {}) * .508, 1e-12);
  EXPECT_NEAR(*result.structure.value, .1524 / std::pow(5.5, 1.0 / 6), 1e-12);
  EXPECT_NEAR(*result.structure.value, .11471, 1e-5);
  EXPECT_NEAR(result.zone(51)->share, 1, 1e-12);
  EXPECT_NEAR(*result.zone(51)->rusted_share, .18 * .06 / .30, 1e-12);
  EXPECT_EQ(result.zone(51)->iso4628_3, 4);  // 3.6 %: over 1 %, up to 8 %
  EXPECT_EQ(result.zone(51)->astm_d610, 4);  // over 3 %, up to 10 %
  EXPECT_NEAR(result.one_zone_gone, std::pow(1 / 5.5, 1.0 / 6), 1e-12);
}

// f counts what is no better: the pitted spot lies in no thin one's share, the thin in the
// pitted's.
TEST(Burden, LengthCountsSpotsNoBetter) {
  survey::Survey survey = fixture::sound_survey();
  survey::Spot station = spot("station", Rust::none);
  survey::Spot unsized_place = spot("somewhere", Rust::scale);
  survey.zones[51].found = {placed("a", Rust::pitting, {600, -690, 200}, {100, 60}),
                            placed("b", Rust::scale, {640, -690, 200}, {100, 60}), unsized_place,
                            station, placed("c", Rust::scale, {420, -690, 200}, {100, 60})};
  const Result result = weigh(survey, {});
  const auto& spots = result.zone(51)->spots;
  // a: 550-650, b: 590-690, c: 370-470 cut at 400; unsized: a quarter of 1000
  EXPECT_NEAR(spots[0].share_of_length, (140 + 70 + 250) / 1000.0, 1e-12);
  EXPECT_NEAR(spots[1].share_of_length, (100 + 70 + 250) / 1000.0, 1e-12);
  EXPECT_NEAR(spots[2].share_of_length, spots[1].share_of_length, 1e-12);
  EXPECT_EQ(spots[3].share_of_length, 0);
}

// A size without a place counts by its length in full: 90 of 1000 mm, not its 50 across.
TEST(Burden, ASpotWithoutAPlaceCountsByItsLength) {
  survey::Survey survey = fixture::sound_survey();
  survey::Spot somewhere = spot("somewhere", Rust::scale);
  somewhere.size = {90, 50};
  survey.zones[51].found = {somewhere};
  EXPECT_NEAR(weigh(survey, {}).zone(51)->spots[0].share_of_length, .09, 1e-12);
}

TEST(Burden, ANearSpotOnALocalZoneWeighsAsMain) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[71].found = {placed("front", Rust::pitting, {1700, -600, 300}, {100, 100})};
  const Spot near = weigh(survey, {}).zone(71)->spots.front();
  EXPECT_EQ(near.near, Near::within_radius);
  EXPECT_EQ(near.counts, 1);
  EXPECT_EQ(near.share_of_length, 1);
  survey.zones[71].found = {placed("rear", Rust::pitting, {2300, -600, 300}, {100, 100})};
  const Spot far = weigh(survey, {}).zone(71)->spots.front();
  EXPECT_EQ(far.counts, .5);
  EXPECT_NEAR(far.share_of_length, .1, 1e-12);
}

TEST(Burden, HasNoValueWhereTooLittleWasSeen) {
  survey::Survey survey = fixture::sound_survey();
  survey.seen[11].word = SeenWord::hidden;  // .40 of 1.10 m2
  const Result result = weigh(survey, {});
  EXPECT_NEAR(result.main.area_share, .70 / 1.10, 1e-12);
  EXPECT_FALSE(result.structure.value);
  EXPECT_EQ(result.structure.why, "too little of the main structure was seen");
  EXPECT_FALSE(result.shell.value);
  EXPECT_TRUE(result.skin.value);
  // the unseen tunnel at .75, no pair, nothing hides it: (5.5 parts at .04, one at .75)
  EXPECT_NEAR(result.structure.high,
              std::pow((4.5 * std::pow(.04, 6) + std::pow(.75, 6)) / 5.5, 1 / 6.0), 1e-12);
}

TEST(Burden, AnUnseenZoneIsHeldBetterWhereItsPairIsGood) {
  survey::Survey survey = fixture::sound_survey();
  survey.seen[52].word = SeenWord::hidden;
  const auto high = [&] { return weigh(survey, {}).structure.high; };
  EXPECT_NEAR(high(), std::pow((4.5 * std::pow(.04, 6) + std::pow(.30, 6)) / 5.5, 1 / 6.0), 1e-12);
  survey.zones[51].found = {placed("middle", Rust::scale, {700, -690, 200}, {10, 10})};  // thin
  EXPECT_GT(high(), std::pow(std::pow(.75, 6) / 5.5, 1 / 6.0));
}

TEST(Burden, CoverageCountsPartByShareScopeByHalfAndTapNothing) {
  const struct {
    survey::Seen seen;
    double share;
  } cases[] = {{{SeenWord::bare}, 1},   {{SeenWord::coated}, 1}, {{SeenWord::part, .6}, .6},
               {{SeenWord::scope}, .5}, {{SeenWord::tap}, 0},    {{SeenWord::hidden}, 0},
               {{std::nullopt}, 0}};
  for (const auto& c : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey.seen[11] = c.seen;
    EXPECT_NEAR(weigh(survey, {}).main.area_share, (.70 + .40 * c.share) / 1.10, 1e-12);
  }
  survey::Survey survey = fixture::sound_survey();
  survey.seen[11].word = SeenWord::not_fitted;
  EXPECT_NEAR(weigh(survey, {}).main.area_share, 1, 1e-12);
}

TEST(Burden, OfSkinIsItsAreaOrItsDepth) {
  survey::Survey survey = fixture::sound_survey();
  const auto value = [&](std::vector<survey::Spot> found) {
    survey.zones[41].found = std::move(found);
    return *weigh(survey, {}).skin.value;
  };
  // 100 x 60 of .60 m2 is 1 %: D610 grade 6, so .4; depth .6 x damage(.98) .04 x (.4 + .06) less
  EXPECT_NEAR(value({placed("a", Rust::surface, {0, -750, 500}, {100, 60})}), .4, 1e-9);
  EXPECT_NEAR(value({placed("a", Rust::hole, {0, -750, 500}, {1, 1})}), .7, 1e-12);
}

TEST(Burden, SharesAddToOne) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[51].found = {placed("a", Rust::scale, {700, -690, 200}, {180, 60})};
  survey.zones[71].found = {placed("b", Rust::pitting, {2300, -600, 300}, {100, 100})};
  survey.zones[41].found = {placed("c", Rust::blister, {0, -750, 500}, {100, 60})};
  double sum = 0;
  for (const Zone& each : weigh(survey, {}).zones) sum += each.share;
  EXPECT_NEAR(sum, 1, 1e-12);
}

}  // namespace
}  // namespace tinworm::weighing
