// What was settled after many random surveys were held against an independent implementation.
#include <algorithm>

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using survey::Rust;

TEST(Settled, RestOfAZoneStaysInItsLowEnd) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].reference_mm = {1, 1, 1};
  survey::Spot sound = fixture::spot("a", Rust::none);
  sound.metal_mm = {1, 1, 1};
  const double nothing = weigh(survey, {}).zone(11)->metal->weighed.low;
  survey.zones[11].found = {sound};
  EXPECT_LE(weigh(survey, {}).zone(11)->metal->weighed.low, nothing);
  EXPECT_EQ(nothing, .95);
}

TEST(Settled, RecordingDamageNeverRaisesALowEnd) {
  survey::Survey survey = fixture::sound_survey();
  survey.seen[11].word = survey::SeenWord::part;
  const Result before = weigh(survey, {});
  survey.zones[11].found = {fixture::spot("a", Rust::surface)};
  const Result after = weigh(survey, {});
  EXPECT_LE(after.zone(11)->metal->weighed.low, before.zone(11)->metal->weighed.low);
  EXPECT_GE(after.structure.high, before.structure.high - 1e-12);
}

TEST(Settled, OrderOfFindingsChangesNothing) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].found = {fixture::spot("b", Rust::scale), fixture::spot("a", Rust::scale),
                            fixture::spot("c", Rust::surface)};
  const Result one = weigh(survey, {});
  std::ranges::reverse(survey.zones[11].found);
  const Result other = weigh(survey, {});
  ASSERT_EQ(one.ranked().size(), other.ranked().size());
  for (std::size_t i = 0; i < one.ranked().size(); ++i)
    EXPECT_EQ(one.ranked()[i]->name, other.ranked()[i]->name);
  EXPECT_EQ(one.zone(11)->metal->weighed, other.zone(11)->metal->weighed);
}

TEST(Settled, AZoneIsAnIntervalOnlyIfEverySpotIs) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].reference_mm = {1, 1, 1};
  survey::Spot read = fixture::spot("a", Rust::pitting);
  read.metal_mm = {.80, .80, .80};
  survey.zones[11].found = {read};
  EXPECT_EQ(weigh(survey, {}).zone(11)->metal->kind, SpanKind::interval);
  survey.zones[11].found.push_back(fixture::spot("b", Rust::surface));
  EXPECT_EQ(weigh(survey, {}).zone(11)->metal->kind, SpanKind::envelope);
}

TEST(Settled, TreatedAndRustingAgainOpensNothing) {
  survey::Survey survey = fixture::sound_survey();
  survey::Repair treated;
  treated.kind = survey::RepairKind::treated;
  treated.now = survey::Now::rusting;
  survey.zones[51].repairs = {treated};
  survey.seen[61].word = survey::SeenWord::hidden;
  for (const OpenUp& each : weigh(survey, {}).open_up) EXPECT_NE(each.rule, "hidden-neighbour");
}

TEST(Settled, UnseenZoneMayBeAsBadAsItsPair) {
  survey::Survey survey = fixture::sound_survey();
  survey.seen[52].word = survey::SeenWord::hidden;
  const double good = weigh(survey, {}).structure.high;
  survey::Spot gone = fixture::spot("a", Rust::scale);
  gone.hand = survey::Hand::breaks;
  gone.size = survey::Size{1000, 100};
  survey.zones[51].found = {gone};
  EXPECT_GT(weigh(survey, {}).structure.high, good);
}

TEST(Settled, APitAgainstAnAssumedSheetIsJudged) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].found = {fixture::spot("a", Rust::pitting)};
  survey.zones[11].found[0].pit_mm = {.5};
  EXPECT_FALSE(weigh(survey, {}).zone(11)->spots.front().by_measure_or_hand);
  survey.zones[11].sheet_mm = 1.0;
  EXPECT_TRUE(weigh(survey, {}).zone(11)->spots.front().by_measure_or_hand);
}

TEST(Settled, CouldBeIsTheWorstOfWhatIsToBeOpened) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[61].found = {fixture::spot("a", Rust::blister)};
  survey.zones[71].found = {fixture::spot("b", Rust::seam)};
  const Result result = weigh(survey, {});
  Verdict worst = result.verdict;
  for (const OpenUp& each : result.open_up) worst = std::max(worst, each.could_become);
  EXPECT_EQ(result.could_be, worst);
  EXPECT_EQ(result.could_be, Verdict::keep_parked);
}

TEST(Settled, PitsReadOverTooLittleOfAPlaceAreAskedAbout) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].sheet_mm = 1.0;
  survey::Spot pits = fixture::placed("bottom", Rust::pitting, {900, 0, 200}, {900, 300});
  pits.pits = survey::PitPatches{{25, 25}, {.20, .24, .22, .30, .26}};
  survey.zones[11].found = {pits};
  std::vector<std::string> asked;
  for (const Advice& each : weigh(survey, {}).advice)
    if (each.kind == "pits-over-place") asked.push_back(text(each));
  EXPECT_EQ(asked,
            (std::vector<std::string>{
                "tunnel (11), bottom: can more of it be searched for pits, patch by patch? Under "
                "3 % of it was read. Only the deepest pit seen counts until then: a deeper one may "
                "stand where nobody looked."}));
}

TEST(Settled, FourPinholesTogetherAreAHole) {
  survey::Survey survey = fixture::sound_survey();
  const auto pinhole = [](const char* name, double x) {
    survey::Spot spot = fixture::placed(name, Rust::surface, {x, 0, 200}, {20, 20});
    spot.hole = survey::Size{4, 4};
    spot.hand = survey::Hand::firm;
    return spot;
  };
  survey.zones[11].found = {pinhole("a", 800), pinhole("b", 830), pinhole("c", 860)};
  EXPECT_EQ(weigh(survey, {}).reasons.front().rule, "pinhole");
  survey.zones[11].found.push_back(pinhole("d", 890));
  EXPECT_EQ(weigh(survey, {}).reasons.front().rule, "weak");
}

}  // namespace
}  // namespace tinworm::weighing
