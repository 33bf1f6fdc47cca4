// What the sections of the owner's paper say, word for word where it matters.
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "documents/fixture.hpp"
#include "documents/papers.hpp"
#include "scene/fixture.hpp"

namespace tinworm::documents {
namespace {

using fixture::Papers;
using fixture::papers;
using fixture::Shot;
using testing::HasSubstr;
using testing::Not;

survey::Repair repair(survey::RepairKind kind, std::optional<survey::Joint> joint = {}) {
  survey::Repair made;
  made.kind = kind;
  made.joint = joint;
  made.size = survey::Size{254, 127};
  return made;
}

// "far" and "near" are of one place alone, and a repair among the findings has its photos there.
TEST(Sections, CaptionsAreOfOnePlace) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  auto& repairs = shot.survey.zones[51].repairs;
  repairs = {repair(survey::RepairKind::let_in, survey::Joint::seam_weld),
             repair(survey::RepairKind::lapped, survey::Joint::seam_weld),
             repair(survey::RepairKind::filled)};
  shot.take(repairs[0].photos, 1);
  shot.take(repairs[1].photos, 1);
  shot.take(repairs[2].photos, 2);
  survey::Spot spot = scene::fixture::spot("lower edge", survey::Rust::scale, {}, {120, 60});
  shot.take(spot.photos, 6);
  shot.survey.zones[52].found.push_back(spot);
  std::multiset<std::string> captions;
  for (const scene::Page& page : papers(shot).report)
    for (const scene::Text* text : scene::texts(page))
      if (text->text.find("IMG_") != std::string::npos) captions.insert(text->text);
  EXPECT_THAT(captions,
              testing::UnorderedElementsAre("IMG_1", "IMG_2", "IMG_3", "IMG_4", "IMG_5", "IMG_6",
                                            "IMG_7", "IMG_8", "IMG_9", "IMG_10"));
}

TEST(Sections, TellsRenewedMetalFromMetalThatWasCovered) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  shot.survey.zones[51].repairs = {repair(survey::RepairKind::let_in),
                                   repair(survey::RepairKind::filled)};
  shot.survey.zones[52].repairs = {repair(survey::RepairKind::lapped)};
  shot.survey.zones[52].repairs.back().beneath = survey::Beneath::cut_out;
  shot.survey.zones[53].repairs = {repair(survey::RepairKind::plated_over)};
  shot.survey.zones[54].repairs = {repair(survey::RepairKind::treated)};
  survey::OwnZone own;
  own.key = "own-a";
  own.name = "sunroof tray";
  own.seen.word = survey::SeenWord::bare;
  own.zone.repairs = {repair(survey::RepairKind::bonded)};
  shot.survey.own.push_back(own);
  const std::string words = fixture::words(papers(shot).report);
  EXPECT_THAT(
      words, HasSubstr("Renewed in part or whole: outer sill, left (51); outer sill, right (52)."));
  EXPECT_THAT(words, HasSubstr("Mended over the metal that was there: sill membrane, left (53); "
                               "sunroof tray (own-a)."));
  EXPECT_THAT(words, HasSubstr("–50, 54–"));  // a treatment is no repair of metal
}

TEST(Sections, LengthsAreInInchesThroughout) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  shot.survey.gauge.uncertainty_mm = 0.0508;
  shot.survey.zones[51].repairs = {repair(survey::RepairKind::filled)};
  for (const char* station : {"rear end", "middle"}) {
    survey::Spot spot = scene::fixture::spot(station, survey::Rust::hole, {}, {254, 127});
    for (const body::Station& each : shot.survey.body->zone(51)->stations)
      if (each.name == station) spot.at = scene::fixture::at(each);
    shot.survey.zones[51].found.push_back(spot);
  }
  std::string words =
      fixture::words(papers(shot, {scene::Paper::a4, quantity::Units::inch}).report);
  // Constants and rates stand as their files have them.
  words.resize(words.find("The method's constants"));
  EXPECT_THAT(words, HasSubstr("Filled, 10.0 x 5.0 in, taken to be sound"));
  EXPECT_THAT(words, HasSubstr("in from the lower belt anchorage"));
  EXPECT_THAT(words, HasSubstr("standard uncertainty 2 thou as the survey states"));
  EXPECT_THAT(words, Not(testing::ContainsRegex("[0-9] mm")));
}

TEST(Sections, FindingsNameEveryHole) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey::Spot spot = scene::fixture::spot("rear end", survey::Rust::surface, {}, {80, 60});
  spot.hole = survey::Size{20, 20};
  spot.other_holes = {survey::Size{15, 15}, survey::Size{8, 8}};
  shot.survey.zones[51].found = {spot};
  const std::string words =
      fixture::words(papers(shot, {scene::Paper::a4, quantity::Units::mm}).report);
  EXPECT_THAT(words, HasSubstr("hole 20 mm x 20 mm, another 15 mm x 15 mm, another 8 mm x 8 mm"));
}

TEST(Sections, TheTableOfPartsSaysWhatTheFindingsSay) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey::Zone& sill = shot.survey.zones[51];
  sill.reference_mm = {1, 1, 1};
  sill.note = "undersealed last spring";
  survey::Spot spot = scene::fixture::spot("middle", survey::Rust::scale, {}, {120, 60});
  spot.metal_mm = {1, 1, 1};
  spot.hand = survey::Hand::gives;
  sill.found = {spot};
  const Papers made = papers(shot);
  const std::string words = fixture::words(made.report);
  EXPECT_THAT(words, HasSubstr("15 to 50 % of the metal left by hand and pits"));
  EXPECT_THAT(words, HasSubstr("weak 15–35–50 %"));
  EXPECT_THAT(words, HasSubstr("Outer sill, left (51): undersealed last spring"));
}

TEST(Sections, AnOwnPartThatNobodySawIsNamedWithItsReason) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  shot.survey.own = {{"own-a",
                      "sunroof tray",
                      body::Role::local,
                      body::Side::centre,
                      {},
                      {},
                      {},
                      {survey::SeenWord::hidden, 0, "headlining"},
                      {}}};
  const Papers made = papers(shot);
  const std::string words = fixture::words(made.report);
  EXPECT_THAT(words, HasSubstr("sunroof tray (own-a) headlining"));
  EXPECT_THAT(words, HasSubstr("sunroof tray: not seen, headlining"));
}

// "To treat (3)" before what stands under it, each place under its own heading.
TEST(Sections, EachFindingStandsUnderItsUrgency) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  const auto found = [&](int zone, const char* name, survey::Rust rust,
                         std::optional<survey::Hand> hand = {}) {
    survey::Spot spot = scene::fixture::spot(name, rust, {}, {60, 40});
    spot.hand = hand;
    spot.note.clear();
    shot.survey.zones[zone].found.push_back(spot);
  };
  found(41, "place five", survey::Rust::surface);
  found(79, "place one", survey::Rust::scale, survey::Hand::breaks);
  found(20, "place three", survey::Rust::scale, survey::Hand::firm);
  found(18, "place two", survey::Rust::scale, survey::Hand::gives);
  found(41, "place four", survey::Rust::hole);
  const std::string words = fixture::words(papers(shot).report);
  std::size_t at = words.find("What was found, by urgency Numbers");
  ASSERT_NE(at, std::string::npos);
  for (const char* next : {"Keep it parked until mended (1)", "place one", "To be mended (1)",
                           "place two", "May be past the limit: to measure (1)", "place three",
                           "To treat (2)", "place four", "place five"}) {
    const std::size_t there = words.find(next, at);
    ASSERT_NE(there, std::string::npos) << next << "\n" << words.substr(at, 2000);
    at = there;
  }
}

TEST(Sections, SaysOfEachRepairWhetherItCanBeReliedOn) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  shot.survey.zones[51].repairs = {repair(survey::RepairKind::let_in, survey::Joint::seam_weld)};
  shot.survey.zones[52].repairs = {repair(survey::RepairKind::let_in)};
  shot.survey.zones[53].repairs = {repair(survey::RepairKind::filled)};
  const std::string words = fixture::words(papers(shot).report);
  EXPECT_THAT(words, HasSubstr("taken to be sound yes seam-welded"));
  EXPECT_THAT(words, HasSubstr("taken to be sound not known how it is joined"));
  EXPECT_THAT(words, HasSubstr("taken to be sound no filled: not strong enough"));
}

TEST(Sections, SaysWhatStandsOnPartsThatNobodySawAndWhichInsides) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  for (const int zone : {23, 69})
    shot.survey.seen[zone] = {survey::SeenWord::hidden, 0, "trim in", {}};
  shot.survey.zones.erase(51);
  shot.survey.zones.erase(53);
  const std::string words = fixture::words(papers(shot).report);
  EXPECT_THAT(words, HasSubstr("rear bulkhead (23) trim in near: bump stop"));
  EXPECT_THAT(words, HasSubstr("trim in inner belt anchorage"));
  EXPECT_THAT(words, HasSubstr("Nobody looked inside: 51, 53."));
}

TEST(Sections, TellsHowFarGapsMoveAndWhatIsNotKnown) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  shot.survey.gaps = {{.where = "left door", .wheels_mm = 4.5, .lift_mm = 3.0},
                      {.where = "right door", .wheels_mm = 4.5}};
  for (int zone = 45; zone <= 90; ++zone) shot.survey.seen.erase(zone);
  const std::string words = fixture::words(papers(shot).report);
  EXPECT_THAT(words, HasSubstr("left door 4.5 mm 3.0 mm 1.5 mm"));
  EXPECT_THAT(words, HasSubstr("right door 4.5 mm not taken not known"));
  EXPECT_THAT(words, HasSubstr("structure not known, from "));
}

TEST(Method, SaysWhyAndWithWhichLeaveItWasLookedAt) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  const auto words = [&] { return fixture::words(papers(shot).report); };
  EXPECT_THAT(words(), HasSubstr("What might be lifted, scraped or probed isn't recorded."));
  EXPECT_THAT(words(), Not(HasSubstr("How it is kept")));
  shot.survey.visit.reason = survey::Reason::purchase;
  shot.survey.visit.leave = {"carpets", "probe"};
  shot.survey.kept.use = survey::Use::all_weather;
  shot.survey.kept.air = survey::Air::c4;
  shot.survey.kept.waxed = survey::PartialDate{2023, 9, 0};
  EXPECT_THAT(words(), HasSubstr("Reason of the visit: purchase. With leave for: carpets, probe."));
  EXPECT_THAT(words(), HasSubstr("How it is kept: all-weather, air C4 (ISO 9223), waxed 2023-09."));
}

}  // namespace
}  // namespace tinworm::documents
