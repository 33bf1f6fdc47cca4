// What a part's places ask for, and what else a plan holds.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "work/fixture.hpp"
#include "work/reckon.hpp"

namespace tinworm::work {
namespace {

using fixture::hole;
using fixture::planned;
using fixture::task;
using survey::Rust;
using survey::SeenWord;
using testing::HasSubstr;

struct Found {
  const char* what;
  int zone;
  Rust rust;
  std::optional<survey::Hand> hand;
  const char* asks;  // "cut", "treat", "" nothing
};

TEST(Work, CutsWhatIsPastTheLimitAndTreatsTheRest) {
  using survey::Hand;
  const Found cases[] = {
      {"surface rust", 11, Rust::surface, Hand::firm, "treat"},
      {"pitted, .85 left", 11, Rust::pitting, Hand::firm, "treat"},
      {"scale, .70 left by its word", 11, Rust::scale, Hand::firm, "cut"},
      {"gives", 11, Rust::surface, Hand::gives, "cut"},
      {"local metal as well", 71, Rust::scale, Hand::firm, "cut"},
      {"skin that is thin", 41, Rust::scale, Hand::firm, "treat"},
      {"skin that is holed", 41, Rust::hole, std::nullopt, "cut"},
      {"nothing", 11, Rust::none, Hand::firm, ""},
  };
  for (const Found& each : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey::Spot spot = fixture::car::spot("spot", each.rust);
    spot.hand = each.hand;
    survey.zones[each.zone].found = {spot};
    const Plan made = planned(survey);
    std::string asks;
    for (const Task& one : made.tasks)
      if (one.zone == each.zone) asks += word(one.kind);
    EXPECT_EQ(asks, each.asks) << each.what;
  }
}

TEST(Work, OnRepairs) {
  using survey::RepairKind;
  const struct {
    const char* what;
    int zone;
    RepairKind kind;
    std::optional<survey::Joint> joint;
    const char* comes_to;
  } cases[] = {
      {"relied on", 51, RepairKind::let_in, survey::Joint::seam_weld, ""},
      {"not relied on", 51, RepairKind::filled, std::nullopt, "cut"},
      {"not relied on, on skin", 41, RepairKind::filled, std::nullopt, ""},
      {"nobody knows", 51, RepairKind::let_in, std::nullopt, "doubt"},
  };
  for (const auto& each : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey::Repair repair;
    repair.kind = each.kind;
    repair.joint = each.joint;
    repair.now_assumed = false;
    survey.zones[each.zone].repairs = {repair};
    const Plan made = planned(survey);
    std::string comes_to = task(made, each.zone, Kind::cut) ? "cut" : "";
    for (const Doubt& doubt : made.doubts)
      if (doubt.zone == each.zone) comes_to += "doubt";
    EXPECT_EQ(comes_to, each.comes_to) << each.what;
    if (const Task* cut = task(made, each.zone, Kind::cut)) {
      EXPECT_EQ(cut->hidden, 2);
      EXPECT_THAT(cut->what, HasSubstr("repair 1 (filled)"));
    }
  }
}

// By hand: 60 x 40 at the middle of the tunnel: weld .40, .48, .60 m; .4 + .40/.40 = 1.4, .5 +
// .48/.25 = 2.42, .6 + .60/.15 = 4.6 h; the high figure by how it was seen.
TEST(Work, RaisesTheHighFigureForWhatIsHidden) {
  const struct {
    SeenWord seen;
    double factor;
  } cases[] = {{SeenWord::bare, 1.15},
               {SeenWord::scope, 1.3},
               {SeenWord::coated, 1.6},
               {SeenWord::part, 1.6},
               {SeenWord::tap, 1.6}};
  for (const auto& each : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey.zones[11].found = {hole("spot", {900, 0, 200}, {60, 40})};
    survey.seen[11].word = each.seen;
    const Plan made = planned(survey);
    const Task* cut = task(made, 11, Kind::cut);
    ASSERT_TRUE(cut) << survey::word(each.seen);
    EXPECT_NEAR(cut->hours.low, 1.4, 1e-9);
    EXPECT_NEAR(cut->hours.likely, 2.42, 1e-9);
    EXPECT_NEAR(cut->hours.high, 4.6 * each.factor, 1e-9) << survey::word(each.seen);
  }
}

TEST(Work, TakesNoLongerThanTheWholeJob) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[51].found = {hole("spot", {900, -690, 200}, {900, 160})};
  const Plan made = planned(survey);
  const Task* cut = task(made, 51, Kind::cut);
  // 970 with 35 mm, 15 from both ends: 1000 x 170, weld 2.34 m; 2.5 + 2.34/.25 = 11.86 h, under 12;
  // 3.3 + 2.34/.15 = 18.9 h, over 16.
  EXPECT_NEAR(cut->hours.likely, 11.86, 1e-9);
  EXPECT_NEAR(cut->hours.high, 16 * 1.15, 1e-9);
  EXPECT_FALSE(cut->at_most);
}

// What fits the damage, in words, and what it must not be.
TEST(Work, DoesWhatFitsTheDamage) {
  const auto on = [](int zone, survey::Spot spot, body::Job job, body::Role role) {
    body::Plan plan = fixture::body_plan();
    for (body::Zone& each : plan.zones)
      if (each.number == zone) {
        each.job = job;
        each.role = role;
        each.joined = role == body::Role::skin ? body::Joined::bolted : body::Joined::welded;
      }
    survey::Survey survey = fixture::car::sound_survey(plan);
    survey.zones[zone].found = {std::move(spot)};
    const Plan made = planned(survey);
    const Task* cut = task(made, zone, Kind::cut);
    return cut ? cut->what : std::string();
  };
  survey::Spot crack = fixture::car::placed("edge", std::nullopt, {900, 0, 200}, {60, 10});
  crack.crack_mm = 35;
  const std::string cracked = on(11, crack, body::Job::other_part, body::Role::main);
  EXPECT_THAT(cracked,
              testing::StartsWith("find what cracked it, drill the ends of the crack, weld "
                                  "it, plate over it with a weld all round, check the "
                                  "bracket and what it carries: edge"));
  EXPECT_THAT(cracked, testing::Not(HasSubstr("cut out")));
  crack.hand = survey::Hand::gives;
  EXPECT_THAT(on(11, crack, body::Job::other_part, body::Role::main), HasSubstr("cut out"))
      << "metal that gives holds no plate";
  const survey::Spot skin = hole("hem", {0, -740, 600}, {60, 40});
  const std::string door = on(41, skin, body::Job::door_bottom, body::Role::skin);
  EXPECT_THAT(door, HasSubstr("folded round the door's frame"));
  EXPECT_THAT(door, testing::Not(HasSubstr("bolted")));
  EXPECT_THAT(on(41, skin, body::Job::front_wing, body::Role::skin), HasSubstr("it is bolted on"));
}

// One part holed here and judged there: two tasks, and the one may fall away.
TEST(Work, KeepsJudgedPlacesApartFromSureOnes) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[71].found = {
      hole("sure", {1700, -600, 300}, {60, 40}),
      fixture::car::placed("judged", Rust::scale, {2400, -600, 300}, {60, 40})};
  const Plan made = planned(survey);
  std::vector<std::string> cuts;
  for (const Task& each : made.tasks)
    if (each.kind == Kind::cut)
      cuts.push_back(each.cuts[0].places[0].substr(0, 6) + (each.judged ? " apart" : ""));
  EXPECT_THAT(cuts, testing::ElementsAre(HasSubstr("sure"), HasSubstr("judged")));
}

TEST(Work, BuysSheetThatIsNotThinner) {
  const struct {
    double original_mm, stock;
  } cases[] = {{.7, .8},   {.8, .8},  {.85, .9},  {.95, 1.0}, {1.05, 1.2}, {1.22, 1.5},
               {1.6, 1.6}, {1.63, 2}, {2.3, 2.5}, {3.0, 3.0}, {3.2, 3.5}};
  for (const auto& each : cases) EXPECT_EQ(stock_mm(each.original_mm), each.stock);
}

TEST(Work, FollowsSoundMetalWhereItReadsThicker) {
  survey::Survey survey = fixture::sound_survey();
  survey::Spot spot = hole("spot", {900, 0, 200}, {60, 40});
  spot.metal_mm = {.5, .5};
  survey.zones[11].found = {spot};
  for (const auto& [reference_mm, original_mm] : {std::pair(1.09, 1.0), std::pair(1.2, 1.2)}) {
    survey.zones[11].reference_mm = {reference_mm};
    const Plan made = planned(survey);
    EXPECT_NEAR(task(made, 11, Kind::cut)->sheet->original_mm, original_mm, 1e-9);
  }
}

TEST(Work, CountsUnseenPartsAsDoubtsInMoney) {
  survey::Survey survey = fixture::sound_survey();
  survey.seen[61] = {SeenWord::hidden, 0, "behind the axle"};
  survey.seen[41] = {SeenWord::hidden, 0, "skin, which carries nothing"};
  const Plan made = planned(survey);
  EXPECT_TRUE(made.tasks.empty());
  EXPECT_FALSE(made.contingency);
  ASSERT_EQ(made.doubts.size(), 1u);
  EXPECT_EQ(made.doubts[0].why, "not seen: behind the axle");
  // A spring hanger: 5, 8.5, 12 h x 65 EUR x 1.08, 1.115, 1.15.
  EXPECT_EQ(made.doubts[0].hours, (Range{5, 8.5, 12}));
  EXPECT_NEAR(made.doubts_cost.low, 351, 1e-9);
  EXPECT_NEAR(made.doubts_cost.likely, 616.0375, 1e-9);
  EXPECT_NEAR(made.doubts_cost.high, 897, 1e-9);
}

TEST(Work, KeepsContingencyByWhatIsKnown) {
  const struct {
    const char* what;
    SeenWord seen;
    bool bad_repair;
    const char* rate;
  } cases[] = {{"bare", SeenWord::bare, false, "contingency-bare"},
               {"scope", SeenWord::scope, false, "contingency-scoped"},
               {"coated", SeenWord::coated, false, "contingency-coated"},
               {"repair", SeenWord::bare, true, "contingency-repaired"}};
  for (const auto& each : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey.zones[71].found = {hole("spot", {2000, -600, 300}, {60, 40})};
    survey.seen[71].word = each.seen;
    if (each.bad_repair) {
      survey::Repair repair;
      repair.kind = survey::RepairKind::brazed;
      survey.zones[71].repairs = {repair};
    }
    const Plan made = planned(survey);
    EXPECT_EQ(made.contingency->rate, each.rate) << each.what;
    EXPECT_NEAR(made.contingency->cost.high, made.contingency->share.high * made.cost.mean, 1e-9);
  }
}

TEST(Cautions, AreThoseOfTheTasks) {
  const auto texts = [](const survey::Survey& survey) {
    std::vector<std::string> all;
    for (const Caution& each : planned(survey).cautions) all.push_back(each.text);
    return fmt::format("{}", fmt::join(all, "\n"));
  };
  survey::Survey survey = fixture::sound_survey();
  EXPECT_EQ(texts(survey), "");
  survey.zones[11].found = {fixture::car::spot("spot", Rust::surface)};
  EXPECT_THAT(texts(survey), HasSubstr("old paint may hold lead"));
  EXPECT_THAT(texts(survey), testing::Not(HasSubstr("weld")));
  survey.zones[11].found = {hole("spot", {900, 0, 200}, {60, 40})};
  EXPECT_THAT(texts(survey), HasSubstr("watch for fire"));
  EXPECT_THAT(texts(survey), HasSubstr("rated stands"));
  EXPECT_THAT(texts(survey), testing::Not(HasSubstr("tank: take it out")));
  body::Plan with_tank = *survey.body;
  with_tank.mounts.push_back(
      fixture::car::mount("tank strap", body::Carries::tank, {1800, 0, 250}, {11}));
  survey.body = std::make_shared<const body::Plan>(with_tank);
  EXPECT_THAT(texts(survey), HasSubstr("tank: take it out")) << "400 mm off";
  EXPECT_THAT(texts(survey), testing::Not(HasSubstr("unload or take out the spring")));
  EXPECT_THAT(texts(survey), testing::Not(HasSubstr("seat belt")));
  with_tank.mounts.push_back(
      fixture::car::mount("spring eye", body::Carries::suspension, {900, 0, 250}, {11}));
  with_tank.mounts.push_back(
      fixture::car::mount("belt anchorage", body::Carries::belts, {900, 0, 250}, {11}));
  survey.body = std::make_shared<const body::Plan>(with_tank);
  EXPECT_THAT(texts(survey), HasSubstr("unload or take out the spring"));
  EXPECT_THAT(texts(survey), HasSubstr("a seat belt is anchored here or near"));
  survey.zones[11].found[0].stuffed = survey::Stuffed::foam;
  EXPECT_THAT(texts(survey), HasSubstr("the box is stuffed"));
}

}  // namespace
}  // namespace tinworm::work
