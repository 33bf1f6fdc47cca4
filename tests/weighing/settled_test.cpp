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

// A part over the whole width hides both sides: a place on one side tells of that side alone.
TEST(Settled, WhatHidesBehindAPlaceLiesOnItsSide) {
  const struct {
    const char* what;
    survey::Position at;
    std::vector<int> opened;
  } cases[] = {
      {"left", {900, -100, 200}, {61}},
      {"right", {900, 100, 200}, {62}},
      {"across the middle", {900, 5, 200}, {61, 62}},
      {"its side not recorded", {900, {}, 200}, {61, 62}},
  };
  for (const auto& each : cases) {
    body::Plan plan = fixture::plan();
    plan.mounts.clear();
    plan.zones[0].hides = {61, 62};
    survey::Survey survey = fixture::sound_survey(std::move(plan));
    survey.seen[61].word = survey.seen[62].word = survey::SeenWord::hidden;
    survey::Spot weak = fixture::spot("a", Rust::scale);
    weak.at = each.at;
    weak.size = survey::Size{40, 40};
    weak.hand = survey::Hand::gives;
    survey.zones[11].found = {weak};
    std::vector<int> opened;
    const Result result = weigh(survey, {});
    for (const Reason& reason : result.open_reasons)
      if (reason.rule == "hidden-neighbour") opened.push_back(reason.zone);
    EXPECT_EQ(opened, each.opened) << each.what;
  }
}

// Through a coat of unknown thickness a gauge tells only how much metal there is at most.
TEST(Settled, AnUpperBoundLeavesThePlaceJudged) {
  const struct {
    double read_mm;
    bool opened;
  } cases[] = {{.80, true}, {.94, true}, {.95, false}, {1.10, false}};
  for (const auto& each : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey.gauge.coating = survey::Coating::left_on;
    survey.zones[11].sheet_mm = 1.0;
    survey::Spot read = fixture::spot("a", Rust::surface);
    read.hand = survey::Hand::firm;
    read.metal_mm = {each.read_mm, each.read_mm};
    survey.zones[11].found = {read};
    const Result result = weigh(survey, {});
    const Spot& spot = result.zone(11)->spots.front();
    EXPECT_FALSE(spot.by_measure_or_hand) << each.read_mm;
    EXPECT_EQ(spot.evidence, Evidence::felt) << each.read_mm;
    EXPECT_EQ(spot.bound_not_sound, each.opened) << each.read_mm;
    const bool opened =
        std::ranges::any_of(result.open_up, [](const OpenUp& open) { return open.zone == 11; });
    EXPECT_EQ(opened, each.opened) << each.read_mm;
  }
}

TEST(Settled, UnseenZoneMayBeAsBadAsWhatHidesIt) {
  survey::Survey survey = fixture::sound_survey();
  survey.seen[61].word = survey::SeenWord::hidden;
  const double good = weigh(survey, {}).structure.high;
  survey::Spot gone = fixture::placed("a", Rust::scale, {500, -690, 200}, {200, 100});
  gone.hand = survey::Hand::breaks;
  survey.zones[71].found = {gone};  // neither its pair nor before it
  const double elsewhere = weigh(survey, {}).structure.high;
  survey.zones[71].found.clear();
  survey.zones[51].found = {gone};  // before it
  EXPECT_GT(weigh(survey, {}).structure.high, good);
  EXPECT_GT(weigh(survey, {}).structure.high, elsewhere);
}

// What a coat over 1000 um hides may lie anywhere in its zone.
TEST(Settled, AThickCoatByTheFilmAloneLowersTheLowEnd) {
  const struct {
    const char* what;
    int zone;
    std::vector<double> film_um;
    bool off_scale;
    double low;
  } cases[] = {
      {"no film", 11, {}, false, .95},
      {"on the limit", 11, {300, 1000}, false, .95},
      {"one reading over it", 11, {300, 1001}, false, .30},
      {"off the gauge's scale", 11, {800}, true, .30},
      {"skin carries nothing", 41, {1800}, false, .95},
  };
  for (const auto& each : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey.zones[each.zone].film_um = each.film_um;
    survey.zones[each.zone].film_off_scale = each.off_scale;
    const Result result = weigh(survey, {});
    EXPECT_EQ(result.zone(each.zone)->metal->weighed.low, each.low) << each.what;
    EXPECT_EQ(result.verdict, Verdict::leave_alone) << each.what;
    EXPECT_EQ(result.could_be, each.low < .5 ? Verdict::mend : Verdict::leave_alone) << each.what;
  }
}

TEST(Settled, AThickCoatOnAMountsPartCouldKeepItParked) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[61].film_um = {1200};
  const Result result = weigh(survey, {});
  EXPECT_EQ(result.could_be, Verdict::keep_parked);
  EXPECT_EQ(result.zone(61)->metal->weighed.low, .30);
  EXPECT_GT(result.structure.high, weigh(fixture::sound_survey(), {}).structure.high);
}

// More film off than the gauge read: no figure, and a question.
TEST(Settled, ReadingsUnderTheFilmContradictEachOther) {
  survey::Survey survey = fixture::sound_survey();
  survey.gauge.coating = survey::Coating::left_on;
  survey.zones[11].sheet_mm = 1.0;
  survey.zones[11].film_um = {400, 400, 400};  // 2.3 x .4 = .92 mm
  survey::Spot read = fixture::spot("a", Rust::surface);
  read.metal_mm = {.85, .86};
  survey.zones[11].found = {read};
  const Result result = weigh(survey, {});
  const Spot& spot = result.zone(11)->spots.front();
  EXPECT_EQ(spot.metal.kind, SpanKind::envelope);
  EXPECT_TRUE(spot.contradict);
  EXPECT_GE(spot.metal.shown.low, 0);
  EXPECT_EQ(spot.metal.remarks,
            std::vector<std::string>{"the film takes more off than the gauge read: no figure"});
  EXPECT_TRUE(std::ranges::any_of(
      result.open_reasons, [](const Reason& each) { return each.rule == "readings-contradict"; }));
}

TEST(Settled, ASkinZonesDamageIsWhatEntersTheSkinBurden) {
  survey::Survey survey = fixture::sound_survey();
  survey::Spot hole = fixture::placed("a", Rust::hole, {0, -740, 500}, {20, 20});
  survey.zones[41].found = {hole};
  const Result result = weigh(survey, {});
  EXPECT_NEAR(*result.zone(41)->damage, .7, 1e-12);                  // holed
  EXPECT_NEAR(*result.skin.value, *result.zone(41)->damage, 1e-12);  // the only skin zone
}

TEST(Settled, APitAloneCountsAsMeasuredInZoneAndCoverage) {
  for (const bool stated : {true, false}) {
    survey::Survey survey = fixture::sound_survey();
    if (stated) survey.zones[11].sheet_mm = 1.0;
    survey.zones[11].found = {fixture::spot("a", Rust::pitting)};
    survey.zones[11].found[0].pit_mm = {.2};
    const Result result = weigh(survey, {});
    EXPECT_EQ(result.zone(11)->evidence, stated ? Evidence::measured : Evidence::looked);
    EXPECT_EQ(result.zone(11)->measured, stated);
    EXPECT_EQ(result.main.measured_share > 0, stated);
  }
}

}  // namespace
}  // namespace tinworm::weighing
