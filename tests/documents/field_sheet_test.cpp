// The paper to take under the car: every place is on it once, every word can be circled, nothing
// lies on another thing.
#include "documents/field_sheet.hpp"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "body/walk_round.hpp"
#include "scene/fixture.hpp"
#include "survey/words.hpp"

namespace tinworm::documents {
namespace {

using testing::HasSubstr;
using testing::Not;

std::vector<scene::Page> made(const survey::Survey* before = nullptr,
                              scene::Paper paper = scene::Paper::a4) {
  const body::PlanPtr plan = before ? before->body : scene::fixture::plan();
  return field_sheet(*plan, before, {paper, "Then type it."}, scene::fixture::measured);
}

std::vector<const scene::Text*> texts_on(const scene::Page& page) {
  std::vector<const scene::Text*> texts;
  for (const scene::Layer& layer : page.layers)
    for (const scene::Item& item : layer.items)
      if (const auto* text = std::get_if<scene::Text>(&item)) texts.push_back(text);
  return texts;
}

std::map<std::string, int> counts(const std::vector<scene::Page>& pages) {
  std::map<std::string, int> counts;
  for (const scene::Page& page : pages)
    for (const scene::Text* text : texts_on(page))
      if (text->says == scene::Says::words) ++counts[text->text];
  return counts;
}

std::string everything(const std::vector<scene::Page>& pages) {
  std::string all;
  for (const scene::Page& page : pages)
    for (const scene::Text* text : texts_on(page)) all += text->text + "\n";
  return all;
}

constexpr double foot_mm = 13;  // the caution and the page's number

int places_of(const body::Plan& plan) {
  int places = 0;
  for (const body::Zone& zone : plan.zones)
    places += std::max(1, static_cast<int>(zone.stations.size()));
  return places;
}

TEST(FieldSheet, HasEachPartAndEachPlaceOnce) {
  const body::PlanPtr plan = scene::fixture::plan();
  const auto said = everything(made());
  for (const body::Zone& zone : plan->zones)
    EXPECT_THAT(said, HasSubstr(fmt::format("{}  ", zone.number)));
  const auto found = counts(made());
  constexpr int for_own_places = 4;
  EXPECT_EQ(found.at("pitting"), places_of(*plan) + for_own_places);
  EXPECT_EQ(found.at("crunches"), places_of(*plan) + for_own_places);
}

TEST(FieldSheet, HasEveryWordThatASurveyTakes) {
  const auto found = counts(made());
  const auto hold = [&](const std::vector<std::string>& words) {
    for (const std::string& word : words) EXPECT_TRUE(found.contains(word)) << word;
  };
  hold(survey::words<survey::Rust>());
  hold(survey::words<survey::Hand>());
  hold(survey::words<survey::Tap>());
  hold(survey::words<survey::SeenWord>());
  hold(survey::words<survey::Inside>());
  hold(survey::words<survey::Drains>());
  hold(survey::words<survey::RepairKind>());
  hold(survey::words<survey::Joint>());
  hold(survey::words<survey::Now>());
  hold(survey::words<survey::Tool>());
  hold(survey::words<survey::When>());
}

TEST(FieldSheet, GoesInTheOrderOfTheWalkRound) {
  const body::PlanPtr plan = scene::fixture::plan();
  const std::string said = everything(made());
  std::size_t at = 0;
  for (const body::Leg& leg : body::walk_round(*plan)) {
    at = said.find(leg.title, at);
    ASSERT_NE(at, said.npos) << leg.title;
    for (const int number : leg.zones) {
      const std::size_t next = said.find(fmt::format("\n{}  ", number), at);
      ASSERT_NE(next, said.npos) << number;
      at = next;
    }
  }
}

survey::Survey earlier() {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.car.name = "Wherry 1200";
  survey.car.odometer = "61200 mi";
  survey.car.owner = survey.car.registration = survey.car.chassis_number = "Zzyxprivate";
  survey.visit.place = survey.visit.by = "Zzyxprivate";
  survey::Zone& sill = survey.zones[51];
  sill.reference_mm = {1.02, 1.0};
  survey::Spot spot = scene::fixture::spot("rear end", survey::Rust::pitting, {}, {180, 60});
  spot.metal_mm = {.81, .78};
  spot.note = "Zzyxnote";
  survey::Spot other = scene::fixture::spot("behind the bracket", survey::Rust::seam, {}, {90, 20});
  sill.found = {spot, other};
  sill.marks = {{"rear end", "25 above the seam"}};
  survey::Repair repair;
  repair.name = "front end";
  sill.repairs = {repair};
  survey::OwnZone own;
  own.key = "own-a";
  own.name = "rear belt mount";
  own.zone.found = {scene::fixture::spot("plate", survey::Rust::surface, {}, {50, 50})};
  survey.own = {own};
  survey.gaps = {{"bonnet edge", body::Side::left, survey::GapKind::gap, 4.5, 3.0, {}}};
  return survey;
}

TEST(FieldSheet, OfAnEarlierSurveyHasWhatWasFound) {
  const survey::Survey before = earlier();
  std::string said = everything(made(&before));
  std::replace(said.begin(), said.end(), '\n', ' ');
  for (const char* each :
       {"Last time: pitting, 180x60, metal 0.81 0.78. To be found: 25 above the seam.",
        "behind the bracket", "Last time, sound metal 1.02 1.00 mm.", "rear belt mount", "plate",
        "bonnet edge", "Wherry 1200", "last time 61200 mi", "Last time: front end: let-in."})
    EXPECT_THAT(said, HasSubstr(each));
  EXPECT_THAT(said, Not(HasSubstr("Zzyx")));
}

TEST(FieldSheet, LiesWithinItsPaperAndNothingOnAnotherThing) {
  const survey::Survey before = earlier();
  for (const scene::Paper paper : {scene::Paper::a4, scene::Paper::letter}) {
    for (const survey::Survey* of : {static_cast<const survey::Survey*>(nullptr), &before}) {
      const auto pages = made(of, paper);
      EXPECT_LE(pages.size(), 32u);  // 23 to 26 with the real letters, which are narrower
      for (const scene::Page& page : pages) {
        EXPECT_GT(page.width_mm, page.height_mm);
        const auto texts = texts_on(page);
        for (std::size_t i = 0; i < texts.size(); ++i) {
          const scene::Text& text = *texts[i];
          EXPECT_TRUE(page.frame.grown(0.01).contains(text.area)) << text.text;
          const double least = text.says == scene::Says::zone_number          ? 6.5
                               : text.at.y_mm > page.frame.bottom() - foot_mm ? 7
                                                                              : 9;
          EXPECT_GE(text.size_pt, least) << text.text;
          for (std::size_t k = i + 1; k < texts.size(); ++k)
            EXPECT_FALSE(text.area.grown(-0.6).overlaps(texts[k]->area.grown(-0.6)))
                << text.text << " | " << texts[k]->text << " on " << page.label;
        }
      }
    }
  }
}

TEST(FieldSheet, SaysWhatABlankMeans) {
  const std::string said = everything(made());
  EXPECT_THAT(said, HasSubstr("never counts as sound"));
  EXPECT_THAT(said, HasSubstr("What wasn't seen is not known."));
}

}  // namespace
}  // namespace tinworm::documents
