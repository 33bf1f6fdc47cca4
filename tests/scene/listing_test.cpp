// What goes with a car for sale: nothing private in any shape of it, and all that must travel.
#include "scene/listing.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "painting/measure.hpp"
#include "scene/fixture.hpp"
#include "scene/for_sale.hpp"
#include "scene/listing_words.hpp"
#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

using testing::AnyOf;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

// Every field that people type freely holds a word of its own that begins with "Zz".
survey::Survey stuffed_survey() {
  survey::Survey survey = fixture::busy_survey(fixture::plan());
  survey.body_text = "ZzBody";
  survey.car.owner = "ZzOwner";
  survey.car.registration = "ZzRegistration";
  survey.car.chassis_number = "ZzChassis";
  survey.car.engine_number = "ZzEngine";
  survey.summary = "ZzSummary";
  survey.car.odometer_km = 987654;
  survey.visit.by = "ZzSurveyor";
  survey.visit.interest = "ZzInterest";
  survey.visit.place = "ZzPlace";
  survey.visit.leave = {"ZzLeave"};
  survey.gauge.name = "ZzGauge";
  survey.photos = {"ZzFolder", "ZzPattern"};
  survey.gaps = {{.where = "ZzGap", .wheels_mm = 4.5, .lift_mm = 3.0}};
  survey.also = {
      {.what = "ZzWhat", .code = "ZzCode", .say = "ZzSay", .when = survey::When::before_use}};
  survey.price = {survey::Money{987654, "ZzAsked"}, survey::Money{987654, "ZzSound"}};
  const survey::Photo photo{"ZzPhoto.jpg", {}};
  for (auto& [number, seen] : survey.seen) seen.reason = "ZzReason";
  for (auto& [number, zone] : survey.zones) {
    zone.note = "ZzZoneNote";
    zone.photos = {photo};
    for (survey::Spot& spot : zone.found) {
      spot.note = "ZzSpotNote";
      spot.photos = {photo};
    }
    for (survey::Repair& repair : zone.repairs) {
      repair.note = "ZzRepairNote";
      repair.photos = {photo};
    }
    survey::Spot free = fixture::spot("ZzSpot", survey::Rust::hole, {}, {40, 40});
    free.hand = survey::Hand::breaks;
    zone.found.push_back(free);
  }
  survey::OwnZone own{
      .key = "own-a", .name = "ZzOwn", .role = body::Role::main, .side = body::Side::left};
  own.seen = {survey::SeenWord::bare, 1, "ZzOwnReason", {}};
  own.zone.found = {fixture::spot("ZzOwnSpot", survey::Rust::hole, {}, {40, 40})};
  own.zone.repairs.resize(1);
  own.zone.repairs[0].note = "ZzOwnRepair";
  const survey::OwnZone unseen{"own-b",
                               "ZzUnseen",
                               body::Role::local,
                               body::Side::left,
                               {},
                               {},
                               {},
                               {survey::SeenWord::hidden, 0, "ZzHidden"},
                               {}};
  survey.own = {own, unseen};
  return survey;
}

// Parts that the body plan lacks, on every side, found in every way.
survey::Survey with_own_zones(survey::Survey survey) {
  const survey::Rust words[] = {survey::Rust::surface, survey::Rust::pitting, survey::Rust::scale,
                                survey::Rust::hole};
  const body::Side sides[] = {body::Side::left, body::Side::right, body::Side::centre};
  survey.own.clear();
  for (int i = 0; i < 26; ++i) {
    survey::OwnZone own{fmt::format("own-{}", static_cast<char>('a' + i)),
                        "ZzOwn",
                        body::Role::main,
                        sides[i % 3],
                        {},
                        {}};
    own.seen = {survey::SeenWord::bare, 1, "", {}};
    own.zone.found = {fixture::spot("ZzOwnSpot", words[i % 4], {}, {40, 40})};
    if (i % 5 == 0) own.zone.found[0].hand = survey::Hand::gives;
    survey.own.push_back(own);
  }
  return survey;
}

weighing::Result stuffed() {
  weighing::Result result = fixture::weighed(stuffed_survey());
  result.file = "ZzFile.yaml";
  result.rules = "ZzRules.yaml";
  result.rules_name = "ZzRulesName";
  result.rules_changed = {"near-radius 250 mm (default 300 mm)"};
  return result;
}

std::string said(const Page& page) {
  std::string all = page.title + " " + page.label + " ";
  for (const Text* text : texts(page)) all += text->text + " ";
  for (const Layer& layer : page.layers) all += layer.name + " ";
  for (const Place& place : page.places) all += place.name + " ";
  return all;
}

// Each page that any listing of the result can have.
std::vector<Page> all_pages(const weighing::Result& result, bool signed_name = false) {
  std::vector<Page> pages;
  ListingOptions options;
  options.signed_name = signed_name;
  for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter}) {
    options.paper = paper;
    for (Page& page : listing(result, options, painting::measure()))
      pages.push_back(std::move(page));
  }
  for (const SheetKind kind : {SheetKind::structure, SheetKind::skin}) {
    auto page = listing_phone(result, kind, options, painting::measure());
    if (page) pages.push_back(std::move(*page));
  }
  return pages;
}

TEST(Listing, LetsNoFreeWordThrough) {
  const weighing::Result result = stuffed();
  // The map says some of them: the words are where they could be seen.
  EXPECT_THAT(fixture::all_said(fixture::drawn(result)), HasSubstr("Zz"));
  const std::vector<Page> pages = all_pages(result);
  ASSERT_GE(pages.size(), 8u);
  for (const Page& page : pages) {
    EXPECT_THAT(said(page), Not(HasSubstr("Zz")));
    EXPECT_THAT(said(page), Not(HasSubstr("987")));
    EXPECT_THAT(said(page), HasSubstr("near-radius 250 mm"));
  }
  // A full column names no places; the picture for a telephone has room for all words.
  EXPECT_THAT(said(pages[pages.size() - 2]), HasSubstr(another_place));
}

TEST(Listing, SignedAddsTheNameAndThatThereIsAnInterest) {
  for (const Page& page : all_pages(stuffed(), true)) {
    std::string text = said(page);
    EXPECT_THAT(text, HasSubstr("ZzSurveyor"));
    EXPECT_THAT(text, HasSubstr("interest in the sale: "));
    EXPECT_THAT(text, HasSubstr("declared"));
    for (std::size_t at; (at = text.find("ZzSurveyor")) != text.npos;) text.erase(at, 10);
    EXPECT_THAT(text, Not(HasSubstr("Zz")));
  }
  weighing::Result result = stuffed();
  for (const auto& [typed, told] : {std::pair<std::string, std::string>{"none", "none"},
                                    {"", "not said"},
                                    {"None", "declared"},
                                    {"brother of the seller", "declared"}}) {
    result.survey.visit.interest = typed;
    EXPECT_EQ(looked_lines(for_sale(result, true)).front(),
              "Surveyed by ZzSurveyor; interest in the sale: " + told + ".");
  }
}

TEST(Listing, EveryPageByItselfSaysWhatMustTravel) {
  for (const auto& result : {stuffed(), fixture::weighed(fixture::clean_survey(fixture::plan()))}) {
    for (const Page& page : all_pages(result)) {
      const std::string text = said(page);
      for (const char* part : {"Wherry 1200", "1967", "2025-04-12", "How it was looked at",
                               "Main structure: ", "Not seen, so not known", "Repairs found",
                               "An aid to judgement", "not a roadworthiness", "3f9a0c1be27d"})
        EXPECT_THAT(text, HasSubstr(part));
      EXPECT_THAT(text, AnyOf(HasSubstr("Rust or damage found in "),
                              HasSubstr("Rust: none found where looked.")));
      EXPECT_THAT(text, HasSubstr(capitalised(weighing::sentence(result.verdict)).substr(0, 12)));
      EXPECT_THAT(text, Not(HasSubstr("rust-free")));
    }
  }
}

TEST(Listing, NothingIsCutOffOrLiesOnOtherWords) {
  const survey::Survey busy = fixture::busy_survey(fixture::plan());
  for (const auto& result :
       {stuffed(), fixture::weighed(busy), fixture::weighed(with_own_zones(busy))}) {
    for (const Page& page : all_pages(result)) {
      const auto all = texts(page);
      for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_TRUE(page.frame.contains(all[i]->area)) << all[i]->text;
        for (std::size_t j = 0; j < i; ++j) {
          EXPECT_FALSE(all[i]->area.grown(-0.1).overlaps(all[j]->area.grown(-0.1)))
              << all[i]->text << " and " << all[j]->text;
        }
      }
    }
  }
}

TEST(Listing, ThePhoneBeginsWithWhatABuyerMustSee) {
  const auto page = listing_phone(stuffed(), SheetKind::structure, {}, painting::measure());
  ASSERT_TRUE(page);
  double drawn_mm = page->height_mm;
  for (const Text* text : texts(*page)) {
    if (text->says == Says::view_name) drawn_mm = std::min(drawn_mm, text->area.y_mm);
  }
  std::string above;
  for (const Text* text : texts(*page)) {
    if (text->area.y_mm < drawn_mm) above += text->text + " ";
  }
  for (const char* part : {"2025-04-12", "Keep it parked until mended", "Worst first", "A ",
                           "of the main structure was not seen", "Not seen, so not known"})
    EXPECT_THAT(above, HasSubstr(part));
}

TEST(ForSale, TellsWhatWasNotSeenByHow) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  survey.zones.clear();
  survey.seen[23] = {survey::SeenWord::hidden, 0, "rear seat in place", {}};
  survey.seen[24] = {survey::SeenWord::hidden, 0, "", {}};
  survey.seen[53] = {survey::SeenWord::tap, 0, "", {}};
  survey.seen.erase(15);
  survey.seen[19] = {survey::SeenWord::part, .7, "", {}};
  std::vector<std::string> lines = unseen_lines(for_sale(fixture::weighed(survey), false));
  ASSERT_GE(lines.size(), 4u);
  lines.resize(4);
  EXPECT_THAT(lines,
              ElementsAre("Tapped or felt only: 53 sill membrane.",
                          "Covered: 23 rear bulkhead, 24 parcel shelf.",
                          "Not recorded: 15 battery tray.", "In part, the rest not: 19 roof."));
}

TEST(ForSale, CountsWhatFindsNoRoom) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  for (const int number : {41, 43, 45, 47, 49, 51}) survey.seen.erase(number);
  const weighing::Result shown = for_sale(fixture::weighed(survey), false);
  EXPECT_EQ(unseen_lines(shown).front(),
            "Not recorded: 45 inner wing, 47 strut top, 49 front chassis leg, 51 outer sill, "
            "41 front wing, 43 headlamp bowl.");
  EXPECT_EQ(unseen_lines(shown, 4).front(),
            "Not recorded: 45 inner wing, 47 strut top, 49 front chassis leg, 51 outer sill and 2 "
            "more zones.");
  EXPECT_EQ(unseen_lines(shown, 5).front(),
            "Not recorded: 45 inner wing, 47 strut top, 49 front chassis leg, 51 outer sill, "
            "41 front wing and 1 more zone.");
  EXPECT_EQ(unseen_lines(shown, 0).front(), "Not recorded: 6 zones.");
}

TEST(ForSale, TellsPartsThatArentDrawnWorstFirst) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  EXPECT_THAT(not_drawn_words(fixture::weighed(survey)), testing::IsEmpty());
  for (const auto& [key, rust] : {std::pair("own-a", survey::Rust::surface),
                                  {"own-b", survey::Rust::hole},
                                  {"own-c", survey::Rust::surface},
                                  {"own-d", survey::Rust::surface}}) {
    survey::OwnZone own{key, "ZzOwn", body::Role::main, body::Side::left, {}, {}};
    own.seen = {survey::SeenWord::bare, 1, "", {}};
    own.zone.found = {fixture::spot("ZzOwnSpot", rust, {}, {40, 40})};
    survey.own.push_back(own);
  }
  const weighing::Result shown = for_sale(fixture::weighed(survey), false);
  const std::string holed = "a part that the body plan lacks, left: holed, judged by eye";
  EXPECT_THAT(
      not_drawn_words(shown),
      ElementsAre(holed,
                  "a part that the body plan lacks, left: bloom, judged by eye; 3 such parts"));
  EXPECT_THAT(not_drawn_words(shown, 1), ElementsAre(holed, "and 3 more parts"));
}

TEST(ForSale, TellsRepairsWithDatesAndWhetherTheyCanBeReliedOn) {
  using survey::Joint;
  using survey::RepairKind;
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  const auto add = [&](int zone, RepairKind kind, std::optional<Joint> joint,
                       std::optional<survey::PartialDate> date) {
    survey::Repair repair;
    repair.kind = kind;
    repair.joint = joint;
    repair.date = date;
    repair.note = "ZzNote";
    survey.zones[zone].repairs.push_back(repair);
  };
  add(95, RepairKind::let_in, {}, survey::PartialDate{2018, {}, {}});
  add(51, RepairKind::let_in, Joint::seam_weld, survey::PartialDate{2021, 5, {}});
  add(52, RepairKind::lapped, {}, {});
  add(53, RepairKind::brazed, Joint::no_weld, {});
  EXPECT_THAT(
      repair_lines(for_sale(fixture::weighed(survey), false)),
      ElementsAre("53 sill membrane, left: brazed, no weld, no date; can\u2019t be relied on: "
                  "brazed: not strong enough for load-bearing metal",
                  "52 outer sill, right: lapped, no date; not known if reliable: how it is joined "
                  "isn't recorded",
                  "51 outer sill, left: let in, seam weld, 2021-05; can be relied on",
                  "95 rear wing, left: let in, 2018; not known if reliable: how it is joined isn't "
                  "recorded"));
}

TEST(ForSale, SharesNeverSayMoreWasSeenThanWas) {
  weighing::Result result = for_sale(stuffed(), false);
  const struct {
    double seen, measured;
    std::string line;
  } cases[] = {{1, 1, "Main structure: 100 % measured, 0 % looked at or felt, 0 % not seen."},
               {.999, .5, "Main structure: 50 % measured, 49 % looked at or felt, 1 % not seen."},
               {.4, .6, "Main structure: 40 % measured, 0 % looked at or felt, 60 % not seen."},
               {0, 0, "Main structure: 0 % measured, 0 % looked at or felt, 100 % not seen."}};
  for (const auto& each : cases) {
    result.main = {each.seen, each.measured, true};
    EXPECT_EQ(looked_lines(result).front(), each.line);
  }
}

TEST(ForSale, OnceStrippedStaysAsItIs) {
  const weighing::Result once = for_sale(stuffed(), true), twice = for_sale(once, true);
  EXPECT_EQ(once.survey, twice.survey);
  EXPECT_EQ(unseen_lines(once), unseen_lines(twice));
  EXPECT_EQ(repair_lines(once), repair_lines(twice));
}

TEST(ForSale, NamesCoatsThatMayBeFiller) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  EXPECT_THAT(looked_lines(for_sale(fixture::weighed(survey), false)),
              Not(testing::Contains(HasSubstr("filler"))));
  survey.zones[51].film_um = {140, 155, 2900};
  survey.zones[95].film_um = {2000, 2100, 2500};
  EXPECT_THAT(looked_lines(for_sale(fixture::weighed(survey), false)),
              testing::Contains("Thick coat, may be filler: 51, 95."));
}

TEST(ForSale, SaysWhatTheSheetDoesNotShow) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  const auto line = [&](SheetKind kind) {
    return elsewhere_line(for_sale(fixture::weighed(survey), false), kind);
  };
  EXPECT_EQ(line(SheetKind::structure), "");
  survey.zones[97].found = {fixture::spot("top", survey::Rust::hole, {}, {30, 20})};
  survey.zones[73].found = {fixture::spot("corner", survey::Rust::scale, {}, {30, 20})};
  EXPECT_EQ(line(SheetKind::structure),
            "Rust was found too on parts that this sheet doesn't show: 97 rear arch lip.");
  EXPECT_EQ(line(SheetKind::skin),
            "Rust was found too on parts that this sheet doesn't show: 73 rear floor.");
}

}  // namespace
}  // namespace tinworm::scene
