// The first page holds whatever a survey has: nothing overlaps or leaves the paper, and what is
// left out is counted.
#include "documents/opening.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "documents/brevity.hpp"
#include "documents/fixture.hpp"
#include "documents/report.hpp"
#include "scene/fixture.hpp"

namespace tinworm::documents {
namespace {

using scene::fixture::measured;
using testing::HasSubstr;
using testing::Not;

constexpr std::size_t longest_name = 80, longest_text = 2000;  // that a survey may have

std::string words_of(std::size_t letters) {
  std::string text;
  while (text.size() < letters) text += "long words ";
  return text.substr(0, letters - 1) + "x";
}

survey::Also before_driving(int number) {
  survey::Also item;
  item.what = fmt::format("thing {}", number);
  item.say = "worn and cracked right through";
  item.when = survey::When::before_use;
  return item;
}

void add_own_zones(survey::Survey& survey, const std::string& name) {
  for (char letter = 'a'; letter <= 'z'; ++letter) {
    survey::OwnZone own;
    own.key = fmt::format("own-{}", letter);
    own.name = name;
    own.role = body::Role::main;
    own.side = body::Side::left;
    own.zone.drains = survey::Drains::blocked;
    own.zone.found = {scene::fixture::spot(name.c_str(), survey::Rust::poultice, {}, {90, 60})};
    own.zone.found[0].hand = survey::Hand::breaks;
    own.seen.word = survey::SeenWord::bare;
    survey.own.push_back(own);
  }
}

// As full as a survey may be; names are of `name`, free words of `text`.
survey::Survey fullest(const std::string& name, const std::string& text) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.car.name = survey.car.owner = survey.car.registration = survey.car.chassis_number = name;
  survey.visit.by = name;
  survey.visit.place = survey.visit.interest = text;
  survey.kept.use = survey::Use::salted;
  add_own_zones(survey, name);
  for (int i = 1; i <= 50; ++i) survey.also.push_back(before_driving(i));
  survey.also[0].say = text;
  survey.price.asked = survey.price.sound = survey::Money{1'000'000'000, "EUR"};
  return survey;
}

scene::Page first_page(const survey::Survey& survey, scene::Paper paper,
                       std::vector<std::string> rules = {}) {
  weighing::Result result = scene::fixture::weighed(survey);
  result.rules_changed = std::move(rules);
  const work::Plan plan = work::plan(result, rates::Rates{});
  return report(result, plan, {}, {paper, quantity::Units::mm}, measured).front();
}

std::vector<std::string> sixty_rules() {
  std::vector<std::string> rules;
  for (int i = 1; i <= 60; ++i)
    rules.push_back(fmt::format("rust.pitting.likely-{} 60 % of the sheet (default 80 %)", i));
  return rules;
}

bool has_map(const scene::Page& page) {
  return std::ranges::any_of(page.layers,
                             [](const scene::Layer& layer) { return layer.name == "zones"; });
}

class FullOpening : public testing::TestWithParam<scene::Paper> {};

TEST_P(FullOpening, NothingOverlapsOrLeavesThePaper) {
  const struct {
    const char* what;
    std::string name, text;
  } cases[] = {
      {"words", words_of(longest_name), words_of(longest_text)},
      {"wide letters", std::string(longest_name, 'W'), std::string(longest_text, 'W')},
  };
  for (const auto& each : cases) {
    const scene::Page page = first_page(fullest(each.name, each.text), GetParam(), sixty_rules());
    const std::vector<const scene::Text*> texts = scene::texts(page);
    for (std::size_t i = 0; i < texts.size(); ++i) {
      EXPECT_TRUE(page.frame.grown(0.5).contains(texts[i]->area))
          << each.what << ": " << texts[i]->text;
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_FALSE(texts[i]->area.grown(-0.25).overlaps(texts[j]->area.grown(-0.25)))
            << each.what << ": " << texts[i]->text << " and " << texts[j]->text;
      }
    }
    EXPECT_THAT(fixture::words(page), HasSubstr("What wasn't seen is not known")) << each.what;
  }
}

TEST_P(FullOpening, SaysHowManyMoreThereAreAndWhere) {
  const std::string page =
      fixture::words(first_page(fullest("Short", "short"), GetParam(), sixty_rules()));
  EXPECT_THAT(page, HasSubstr("Before it is driven: thing 1: short; thing 2: worn"));
  EXPECT_THAT(page, HasSubstr("more under What else was seen."));
  EXPECT_THAT(page, HasSubstr("Rules changed: rust.pitting.likely-1 60 %"));
  EXPECT_THAT(page, HasSubstr("more under How it was judged."));
}

INSTANTIATE_TEST_SUITE_P(Papers, FullOpening,
                         testing::Values(scene::Paper::a4, scene::Paper::letter));

TEST(Opening, LeavesTheMapOutWhereThereIsNoRoomForIt) {
  const std::string name(longest_name, 'W'), text(longest_text, 'W');
  EXPECT_FALSE(has_map(first_page(fullest(name, text), scene::Paper::letter)));
  EXPECT_TRUE(has_map(first_page(fullest("Short", "short"), scene::Paper::letter)));
}

TEST(Opening, CountsTheWorstPlacesThatThereAre) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  const char* headings[] = {"No rust was found where looked", "The worst place ",
                            "The worst two places", "The worst three places",
                            "The worst three places"};
  int zone = 51;
  for (const char* heading : headings) {
    EXPECT_THAT(fixture::words(first_page(survey, scene::Paper::a4)), HasSubstr(heading));
    survey.zones[zone++].found.push_back(
        scene::fixture::spot("middle", survey::Rust::pitting, {}, {100, 80}));
  }
}

TEST(Brevity, ShortensBetweenCharacters) {
  const struct {
    const char* text;
    std::size_t letters;
    const char* shown;
  } cases[] = {
      {"", 4, ""},           {"sill", 4, "sill"},      {"sills", 4, "sil…"},
      {"to, and", 4, "to…"}, {"Träger", 6, "Träger"},  {"Träger", 4, "Trä…"},
      {"x", 0, "…"},         {"車車車車", 3, "車車…"},
  };
  for (const auto& each : cases) {
    EXPECT_EQ(shortened(each.text, each.letters), each.shown) << each.text;
  }
}

TEST(Brevity, ListsWhatStandsInItsLines) {
  scene::Layer layer;  // a letter of 10 pt is 0.7 mm wide: 100 to a line
  const scene::Measure measure = fixture::plain_measure;
  const scene::Writer writer{layer, {0, 0, 100 * 2 * scene::mm_per_pt, 100}, 0, measure};
  const scene::Style style{.size_pt = 10};
  const auto line = [&](std::vector<std::string> items, std::size_t lines) {
    return listed({"First: ", std::move(items), "Rest"}, style, lines, writer);
  };
  const std::string forty(40, 'a'), eighty(80, 'b');
  EXPECT_EQ(line({"one"}, 1), "First: one.");
  EXPECT_EQ(line({forty, forty}, 1), "First: " + forty + "; " + forty + ".");
  EXPECT_EQ(line({forty, forty, forty}, 1), "First: " + forty + "; and 2 more under Rest.");
  EXPECT_EQ(line({forty, forty, forty}, 2), "First: " + forty + "; " + forty + "; " + forty + ".");
  EXPECT_EQ(line({eighty, eighty}, 1), "First: " + eighty + "; and 1 more under Rest.");
}

}  // namespace
}  // namespace tinworm::documents
