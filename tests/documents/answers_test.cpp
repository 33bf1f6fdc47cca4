// What an owner asks first: exact words for each case.
#include "documents/answers.hpp"
#include "documents/costs.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "documents/remarks.hpp"
#include "scene/fixture.hpp"

namespace tinworm::documents {
namespace {

using testing::ElementsAre;
using weighing::Verdict;

weighing::Result sound_car() {
  return scene::fixture::weighed(scene::fixture::clean_survey(scene::fixture::plan()));
}

survey::Also before_driving(const char* what) {
  survey::Also item;
  item.what = what;
  item.when = survey::When::before_use;
  return item;
}

TEST(Answers, WhetherItMayBeDrivenIsNeverAPlainYes) {
  const struct {
    Verdict verdict, could_be;
    bool before_use;
    const char* answer;
  } cases[] = {
      {Verdict::keep_parked, Verdict::keep_parked, false, "No: keep it parked until mended"},
      {Verdict::keep_parked, Verdict::keep_parked, true, "No: keep it parked until mended"},
      {Verdict::not_known, Verdict::keep_parked, false, "Not known: too little was seen"},
      {Verdict::not_known, Verdict::keep_parked, true,
       "Not yet; then not known: too little was seen"},
      {Verdict::mend, Verdict::keep_parked, false,
       "Not settled: what nobody saw or measured could forbid it"},
      {Verdict::mend, Verdict::keep_parked, true,
       "Not yet; then not settled: what nobody saw could forbid it"},
      {Verdict::mend, Verdict::mend, false,
       "For an inspection to say: what carries the car is to be mended"},
      {Verdict::mend, Verdict::mend, true,
       "Not yet; then for an inspection to say: it is to be mended"},
      {Verdict::treat, Verdict::mend, false,
       "What was found doesn't forbid it; law and inspection decide"},
      {Verdict::leave_alone, Verdict::leave_alone, false,
       "Nothing found forbids it; law and inspection decide"},
      {Verdict::leave_alone, Verdict::leave_alone, true,
       "Not yet: first see to what is named here"}};
  for (const auto& each : cases) {
    weighing::Result result = sound_car();
    result.verdict = each.verdict;
    result.could_be = each.could_be;
    result.open_up.clear();
    if (each.before_use) result.survey.also.push_back(before_driving("brakes"));
    EXPECT_EQ(may_it_be_driven(result), each.answer);
  }
}

TEST(Answers, WhatOpeningUpMayFindCountsTowardsDriving) {
  weighing::Result result = sound_car();
  result.verdict = result.could_be = Verdict::mend;
  weighing::OpenUp open;
  open.zone = 69;
  open.could_become = Verdict::keep_parked;
  result.open_up = {open};
  EXPECT_EQ(may_it_be_driven(result), "Not settled: what nobody saw or measured could forbid it");
}

TEST(Answers, TheVerdictIsExplained) {
  weighing::Result result = sound_car();
  result.verdict = Verdict::mend;
  result.could_be = Verdict::keep_parked;
  result.open_up_first = true;
  EXPECT_EQ(
      verdict_line(result),
      "Verdict: to be mended. Could be: keep it parked until mended. Open up first. Metal that "
      "carries the car is past its limit (85 % of the sheet is to be left), or a repair of it "
      "can't be relied on: it is to be mended.");
}

TEST(Answers, WhatToStopNow) {
  weighing::Result result = sound_car();
  const char* always = "Keep carpets dry and drains open (common practice).";
  EXPECT_THAT(stop_lines(result, 4), ElementsAre(always));
  result.survey.kept.use = survey::Use::salted;
  result.survey.zones[17].drains = survey::Drains::blocked;
  result.survey.zones[28].drains = survey::Drains::plugged;
  result.survey.zones[51].drains = survey::Drains::open;
  EXPECT_THAT(stop_lines(result, 4),
              ElementsAre("Open the drains of scuttle (17); spare-wheel well (28).",
                          "Keep it off salted roads until it is treated, and wash it underneath.",
                          "Keep carpets dry (common practice)."));
  survey::Survey survey = result.survey;
  survey.kept.use.reset();
  survey.zones[17].drains.reset();
  survey.zones[28].drains.reset();
  for (const char* place : {"footwell", "seat rail"})
    survey.zones[65].found.push_back(
        scene::fixture::spot(place, survey::Rust::poultice, {}, {100, 80}));
  EXPECT_THAT(stop_lines(scene::fixture::weighed(survey), 4),
              ElementsAre("Take out what holds the wet at front floor, left (65).", always));
}

TEST(Answers, WhenToLookAgain) {
  weighing::Result result = sound_car();
  const struct {
    std::optional<survey::Use> use;
    const char* answer;
  } cases[] = {
      {survey::Use::stored,
       "By 2029-04 (48 months, as is usual for a car stored dry). By this survey alone: beside "
       "earlier ones it may be sooner."},
      {survey::Use::dry_season,
       "By 2027-04 (24 months, as is usual for a car driven in the dry season). By this survey "
       "alone: beside earlier ones it may be sooner."},
      {survey::Use::all_weather,
       "By 2026-04 (12 months, as is usual for a car driven in all weathers). By this survey "
       "alone: beside earlier ones it may be sooner."},
      {survey::Use::salted,
       "By 2025-10 (6 months, as is usual for a car driven on salted roads). By this survey alone: "
       "beside earlier ones it may be sooner."},
      {{},
       "By 2026-04 (12 months, as is usual for a car driven in all weathers (how it is kept isn't "
       "told)). By this survey alone: beside earlier ones it may be sooner."}};
  for (const auto& each : cases) {
    result.survey.kept.use = each.use;
    EXPECT_EQ(look_again(result, nullptr), each.answer);
  }
  result.verdict = Verdict::keep_parked;
  EXPECT_EQ(look_again(result, nullptr),
            "After the repair: the verdict is to keep it parked until then.");
}

weighing::OpenUp to_open(int zone, Verdict could_become) {
  weighing::OpenUp open;
  open.zone = zone;
  open.could_become = could_become;
  return open;
}

TEST(Answers, WhatNobodySawIsCountedByWhatItCouldChange) {
  weighing::Result result = sound_car();
  EXPECT_THAT(unseen_lines(result, 3), ElementsAre("No part was left out altogether."));
  result.open_up = {to_open(69, Verdict::keep_parked), to_open(71, Verdict::keep_parked),
                    to_open(63, Verdict::mend)};
  result.not_seen = {{69, "seats bolted down over it", ""}};
  const std::string unseen = "Not seen at all: seat and belt anchorage, left (69).";
  const struct {
    Verdict verdict;
    const char* line;
  } cases[] = {
      {Verdict::leave_alone,
       "3 parts could make the verdict worse, first: seat and belt anchorage, left (69); B-post "
       "and "
       "foot, left (71); and 1 more."},
      {Verdict::mend,
       "2 parts could make the verdict worse, first: seat and belt anchorage, left (69); B-post "
       "and "
       "foot, left (71)."},
      {Verdict::keep_parked,
       "3 parts could add to the work, first: seat and belt anchorage, left (69); B-post and foot, "
       "left (71); and 1 more."}};
  for (const auto& each : cases) {
    result.verdict = each.verdict;
    EXPECT_THAT(unseen_lines(result, 2), ElementsAre(each.line, unseen));
  }
  result.open_up = {to_open(63, Verdict::mend)};
  result.verdict = Verdict::treat;
  EXPECT_EQ(unseen_lines(result, 2).front(),
            "One part could make the verdict worse: outrigger, left (63).");
}

TEST(Answers, AnOwnPartThatNobodySawIsNamed) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.own = {{"own-a",
                 "sunroof tray",
                 body::Role::local,
                 body::Side::centre,
                 {},
                 {},
                 {},
                 {survey::SeenWord::hidden, 0, "headlining"},
                 {}}};
  EXPECT_EQ(unseen_lines(scene::fixture::weighed(survey), 3).back(),
            "Not seen at all: sunroof tray (own-a).");
}

TEST(Answers, TheWorstPlacesFirst) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.zones[51].found = {
      scene::fixture::spot("middle", survey::Rust::surface, {}, {100, 60}),
      scene::fixture::spot("rear end", survey::Rust::hole, {1150, -640, 200}, {60, 40})};
  survey.zones[41].found = {scene::fixture::spot("bottom", survey::Rust::blister, {}, {50, 50})};
  const auto places = worst_places(scene::fixture::weighed(survey), 2);
  ASSERT_EQ(places.size(), 2U);
  EXPECT_EQ(places[0].title, "Outer sill, left (51), rear end: holed");
  EXPECT_EQ(places[0].link, "found-1");
  EXPECT_EQ(places[1].title, "Outer sill, left (51), middle: bloom");
  EXPECT_EQ(places[1].detail,
            "95 to 100 % of the metal left, judged by eye; may be near the lower belt anchorage");
}

work::Task task(int zone, work::Kind kind, work::Urgency urgency, bool certain = true) {
  work::Task made;
  made.zone = zone;
  made.kind = kind;
  made.urgency = urgency;
  if (kind == work::Kind::cut) made.cuts.emplace_back().certain = certain;
  return made;
}

TEST(Answers, WhatToDoFirst) {
  using work::Kind;
  using work::Urgency;
  weighing::Result result = sound_car();
  work::Plan plan;
  EXPECT_THAT(first_lines(result, plan, 3),
              ElementsAre("Nothing was found that asks for work where looked."));
  plan.tasks = {task(41, Kind::treat, Urgency::looks)};
  EXPECT_THAT(first_lines(result, plan, 3), ElementsAre("Clean, treat, coat and wax; one task."));
  plan.tasks.push_back(task(28, Kind::drains, Urgency::water));
  EXPECT_THAT(first_lines(result, plan, 3), ElementsAre("Clean, treat, coat and wax; 2 tasks."));
  plan.tasks.push_back(task(71, Kind::cut, Urgency::danger, false));
  EXPECT_THAT(
      first_lines(result, plan, 3),
      ElementsAre("Clean and measure, and cut if past the limit: B-post and foot, left (71)."));
  plan.tasks.push_back(task(51, Kind::cut, Urgency::stiffness));
  plan.tasks.push_back(task(73, Kind::cut, Urgency::stiffness));
  EXPECT_THAT(
      first_lines(result, plan, 3),
      ElementsAre("Cut and weld, in this order: outer sill, left (51); rear floor, left (73).",
                  "Clean and measure, and cut if past the limit: B-post and foot, left (71)."));
  plan.tasks.push_back(task(85, Kind::cut, Urgency::danger));
  result.open_up = {to_open(69, Verdict::keep_parked)};
  result.open_up_first = true;
  EXPECT_THAT(
      first_lines(result, plan, 3),
      ElementsAre("Open up and measure: seat and belt anchorage, left (69).",
                  "Cut and weld, in this order: rear spring hanger, left (85).",
                  "Clean and measure, and cut if past the limit: B-post and foot, left (71)."));
}

work::Plan with_doubts(std::size_t how_many) {
  work::Plan plan;
  work::Doubt doubt;
  doubt.zone = 23;
  plan.doubts.assign(how_many, doubt);
  plan.doubts_cost = {560, 1000, 1500};
  return plan;
}

work::Plan with_work(work::Plan plan) {
  plan.tasks.emplace_back();
  plan.hours = {{30, 80, 180}, 88, 10, 103};
  plan.cost = {{2300, 6000, 13700}, 6400, 900, 7600};
  return plan;
}

TEST(Answers, WhatItMayTake) {
  const weighing::Result result = sound_car();
  EXPECT_THAT(cost_lines(result, {}),
              ElementsAre("Nothing was found that asks for work where looked."));
  // Nothing found is no promise: what nobody saw may still cost.
  EXPECT_THAT(
      cost_lines(result, with_doubts(2)),
      ElementsAre("Nothing was found that asks for work where looked.",
                  "What could double it: 2 parts that nobody could judge, 560 to 1\u00A0500 EUR "
                  "more if all were rotten; the dearest: rear bulkhead (23)."));
  work::Plan plan = with_work(with_doubts(1));
  EXPECT_THAT(
      cost_lines(result, plan),
      ElementsAre("By assumptions, no quote: about 6\u00A0400 EUR and 88\u00A0h to cut, weld and "
                  "treat; not over 7\u00A0600 EUR in 80 of 100 such cases.",
                  "Not in it: stripping, paint, parts, mechanical work, taxes.",
                  "What could double it: a part that nobody could judge, 560 to 1\u00A0500 EUR "
                  "more if all were rotten; the dearest: rear bulkhead (23)."));
  plan.rates_changed = {"hour 72 EUR (default 65 EUR)"};
  plan.contingency = work::Contingency{"", "", {}, {1900, 2900, 3800}};
  const auto lines = cost_lines(result, plan);
  EXPECT_THAT(lines[0], testing::StartsWith("By your rates, no quote: about"));
  EXPECT_EQ(lines[1],
            "Not in it: stripping, paint, parts, mechanical work, taxes; and 1\u00A0900 to "
            "3\u00A0800 EUR to set aside for what opening up shows.");
}

TEST(Answers, WhetherItIsAGoodBuy) {
  const struct {
    double asked, sound;
    const char* currency;
    bool work, contingency;
    const char* answer;
  } cases[] = {
      {9500, 14000, "EUR", true, true,
       "Worth 14\u00A0000 EUR when sound, 9\u00A0500 asked: this work leaves \u22126\u00A0900 "
       "(contingency "
       "spent) to 2\u00A0200 EUR, likely \u22121\u00A0900. Likely it costs more than the price "
       "leaves."},
      {9500, 10000, "EUR", true, false,
       "Worth 10\u00A0000 EUR when sound, 9\u00A0500 asked: this work leaves \u22127\u00A0100 to "
       "\u22121\u00A0800 EUR, likely \u22125\u00A0900. Even at the low figures it costs more than "
       "the "
       "price leaves."},
      {9500, 17000, "EUR", true, false,
       "Worth 17\u00A0000 EUR when sound, 9\u00A0500 asked: this work leaves \u2212100 to "
       "5\u00A0200 EUR, "
       "likely 1\u00A0100. Likely the price leaves room for it."},
      {9500, 20000, "EUR", true, false,
       "Worth 20\u00A0000 EUR when sound, 9\u00A0500 asked: this work leaves 2\u00A0900 to "
       "8\u00A0200 EUR, "
       "likely 4\u00A0100. The price leaves room for it."},
      {9500, 14000, "EUR", false, false,
       "Worth 14\u00A0000 EUR when sound, 9\u00A0500 asked: that leaves 4\u00A0500 EUR for what "
       "nobody "
       "saw."},
      {9500, 14000, "SEK", true, false,
       "The prices aren't both in EUR, the currency of the rates: no arithmetic."}};
  weighing::Result result = sound_car();
  result.survey.price = {};
  EXPECT_EQ(good_buy(result, with_work({})), "");
  for (const auto& each : cases) {
    result.survey.price.asked = survey::Money{each.asked, "EUR"};
    result.survey.price.sound = survey::Money{each.sound, each.currency};
    work::Plan plan = each.work ? with_work({}) : work::Plan{};
    if (each.contingency) plan.contingency = work::Contingency{"", "", {}, {1900, 2900, 3800}};
    EXPECT_EQ(good_buy(result, plan), each.answer);
  }
}

// Weeks and years: 49 CFR 574.5, 64 FR 36807 (four figures from 2000, three before, decade open).
TEST(TyreAge, ByItsCodeOnTheDayOfTheSurvey) {
  const struct {
    const char* code;
    const char* words;
  } cases[] = {
      {"3500", "made in week 35 of 2000: 24 years old; over 10: replace them whatever the tread"},
      {"0301", "made in week 3 of 2001: 24 years old; over 10: replace them whatever the tread"},
      {"1218", "made in week 12 of 2018: 7 years old; over 6: suspect, have them looked at"},
      {"4814", "made in week 48 of 2014: 10 years old; over 10: replace them whatever the tread"},
      {"2015", "made in week 20 of 2015: 9 years old; over 6: suspect, have them looked at"},
      {"4818", "made in week 48 of 2018: 6 years old; over 6: suspect, have them looked at"},
      {"2019", "made in week 20 of 2019: 5 years old"},
      {"1222", "made in week 12 of 2022: 3 years old"},
      {"317",
       "made in week 31 of a year ending in 7, before 2000: decade unknown, 25 years old at the "
       "least; replace them"},
      {"3025", "made in week 30 of 2025, after the survey: read the code again"},
      {"", ""}};
  for (const auto& each : cases) {
    survey::Also item;
    item.what = "tyres";
    item.code = each.code;
    EXPECT_EQ(tyre_age(item, {2025, 4, 12}), each.words) << each.code;
  }
}

}  // namespace
}  // namespace tinworm::documents
