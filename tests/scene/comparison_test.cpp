// Pictures of a comparison: a ramp that every eye can read, nothing private, no words on words.
#include <algorithm>
#include <functional>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

#include "history/compare.hpp"
#include "painting/measure.hpp"
#include "scene/comparison.hpp"
#include "scene/fixture.hpp"
#include "scene/palette.hpp"
#include "scene/showing_palette.hpp"
#include "scene/thickness_chart.hpp"

namespace tinworm::scene {
namespace {

constexpr Showing loss[] = {Showing::nothing, Showing::lost_little, Showing::lost_some,
                            Showing::lost_much, Showing::gone};

TEST(ShowingPalette, LightnessFallsAlongTheLossToEveryEye) {
  const std::pair<const char*, std::function<Colour(Colour)>> eyes[] = {
      {"as printed", [](Colour colour) { return colour; }},
      {"in grey", grey_of},
      {"protan", [](Colour colour) { return seen_by(Vision::protan, colour); }},
      {"deutan", [](Colour colour) { return seen_by(Vision::deutan, colour); }},
      {"tritan", [](Colour colour) { return seen_by(Vision::tritan, colour); }},
  };
  for (const auto& [eye, sees] : eyes) {
    for (std::size_t i = 1; i < std::size(loss); ++i) {
      const Colour before = sees(strong(loss[i - 1])), after = sees(strong(loss[i]));
      EXPECT_LT(to_oklab(after).lightness, to_oklab(before).lightness) << eye << name_of(loss[i]);
      EXPECT_GE(oklab_distance(before, after), 0.09) << eye << name_of(loss[i]);
    }
  }
}

TEST(ShowingPalette, EachTintHasATextureOfItsOwn) {
  const Showing filled[] = {Showing::lost_little, Showing::lost_some,        Showing::lost_much,
                            Showing::gone,        Showing::repaired,         Showing::newly_seen,
                            Showing::by_sign,     Showing::no_longer_visible};
  for (const Showing& one : filled)
    for (const Showing& other : filled)
      if (&one != &other) {
        EXPECT_NE(texture_of(one), texture_of(other)) << name_of(one);
      }
}

survey::Spot measured(const char* name, survey::Position at, std::vector<double> metal_mm) {
  survey::Spot spot = fixture::spot(name, survey::Rust::surface, at, {80, 40});
  spot.metal_mm = std::move(metal_mm);
  spot.note = "private note";
  return spot;
}

// A sill that thins, a floor that is hidden later, a leg mended in between.
history::Comparison story(int surveys) {
  const body::PlanPtr plan = fixture::plan();
  std::vector<weighing::Result> results;
  for (int i = 0; i < surveys; ++i) {
    survey::Survey survey = fixture::clean_survey(plan);
    survey.visit.date = {2005 + i, 4, 12};
    survey.zones[52].reference_mm = {1.10, 1.11};
    const body::Zone& sill = *plan->zone(52);
    survey.zones[52].found.push_back(measured(sill.stations.front().name.c_str(),
                                              fixture::at(sill.stations.front()),
                                              {1.08 - .3 * i / surveys, 1.07 - .3 * i / surveys}));
    if (i + 1 == surveys) survey.seen[65].word = survey::SeenWord::hidden;
    if (i > 0) {
      survey::Repair repair;
      repair.joint = survey::Joint::seam_weld;
      survey.zones[81].repairs.push_back(repair);
    }
    results.push_back(weighing::weigh(survey, {}));
    results.back().file = std::to_string(i);
    results.back().sha256 = std::string(63, 'a') + static_cast<char>('a' + i % 26);
  }
  return history::compare(std::move(results), {});
}

std::vector<Page> all_pages(int surveys, Paper paper) {
  const history::Comparison comparison = story(surveys);
  ComparisonOptions options;
  options.paper = paper;
  std::vector<Page> pages = comparison_pages(comparison, options, painting::measure());
  for (Page& page : comparison_map(comparison, SheetKind::skin, options, painting::measure()))
    pages.push_back(std::move(page));
  return pages;
}

std::string all_words(const std::vector<Page>& pages) {
  std::string words;
  for (const Page& page : pages)
    for (const Text* text : texts(page)) words += text->text + "\n";
  return words;
}

TEST(ComparisonPages, NothingPrivate) {
  const std::string words = all_words(all_pages(3, Paper::a4)) + picture_description(story(3));
  for (const char* never : {"Owner Private", "PRIVATE 1", "W12-PRIVATE", "Private Lane",
                            "private note", "9512", "S. Urveyor"})
    EXPECT_EQ(words.find(never), std::string::npos) << never;
}

TEST(ComparisonPages, LimitsTravelWithThem) {
  for (const int surveys : {2, 3, 20}) {
    for (const Page& page : all_pages(surveys, Paper::a4)) {
      std::string words;
      for (const Text* text : texts(page)) words += text->text + " ";
      EXPECT_NE(words.find("no date of failure"), std::string::npos) << page.title;
      EXPECT_NE(words.find("not a roadworthiness test"), std::string::npos) << page.title;
      EXPECT_NE(words.find("Wherry 1200"), std::string::npos) << page.title;
    }
  }
}

TEST(ComparisonPages, NoWordsOnWordsNorOffThePaper) {
  for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter}) {
    for (const int surveys : {2, 3, 20}) {
      const std::vector<Page> pages = all_pages(surveys, paper);
      EXPECT_GE(pages.size(), 3u);
      EXPECT_LE(pages.size(), 5u);  // the skin's map alone counts too
      for (const Page& page : pages) {
        const auto all = texts(page);
        for (std::size_t i = 0; i < all.size(); ++i) {
          EXPECT_TRUE(page.frame.grown(0.1).contains(all[i]->area)) << page.title << all[i]->text;
          for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(all[i]->area.grown(-0.2).overlaps(all[j]->area.grown(-0.2)))
                << page.title << ", " << surveys << ": \"" << all[i]->text << "\" on \""
                << all[j]->text << '"';
        }
      }
    }
  }
}

// Three surveys are told on four pages at most, a skin sheet among them.
TEST(ComparisonPages, AreFew) {
  for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter}) {
    for (const int surveys : {2, 3, 20}) {
      ComparisonOptions options;
      options.paper = paper;
      const auto pages = comparison_pages(story(surveys), options, painting::measure());
      EXPECT_GE(pages.size(), 2u);
      EXPECT_LE(pages.size(), 4u) << surveys;
    }
  }
}

// Where the limits find no room beside a map, it names the page that has them in full.
TEST(ComparisonPages, LimitsAreInTheListWhereNoMapHasRoom) {
  const body::PlanPtr plan = fixture::plan();
  std::vector<weighing::Result> results;
  for (const int year : {2005, 2009}) {
    survey::Survey survey = fixture::clean_survey(plan);
    survey.visit.date = {year, 4, 12};
    for (auto& [zone, seen] : survey.seen) {
      if (zone % 2 == 0) continue;
      seen.word = survey::SeenWord::hidden;
      seen.reason = fmt::format("behind trim that is number {} of very many pieces", zone);
    }
    results.push_back(weighing::weigh(survey, {}));
    results.back().file = std::to_string(year);
    results.back().sha256 = std::string(64, year == 2005 ? 'a' : 'b');
  }
  const history::Comparison comparison = history::compare(std::move(results), {});
  const auto pages = comparison_pages(comparison, {}, painting::measure());
  const std::string map = all_words({pages.front()});
  const std::size_t named = map.find("on page ");
  ASSERT_NE(named, std::string::npos) << map;
  const auto page = static_cast<std::size_t>(map[named + 8] - '0');
  ASSERT_LE(page, pages.size());
  const std::string list = all_words({pages[page - 1]});
  EXPECT_NE(list.find("Not seen, so not known"), std::string::npos);
  std::string all = all_words(pages);
  std::ranges::replace(all, '\n', ' ');
  for (const weighing::NotSeen& each : comparison.latest().not_seen)
    EXPECT_NE(all.find(each.why), std::string::npos) << each.why;
}

// A chart tells the years of its surveys, and none where the planning band runs.
TEST(ThicknessChart, YearsAreThoseOfTheSurveys) {
  const history::Comparison comparison = story(3);
  const history::Place& place = *comparison.by_change().front();
  Page page;
  draw_thickness_chart(page, comparison, place, quantity::Units::mm, {0, 0, 80, 50},
                       painting::measure());
  std::vector<std::string> years;
  for (const Text* text : texts(page))
    if (text->says == Says::scale && text->text.starts_with("20")) years.push_back(text->text);
  std::ranges::sort(years);
  EXPECT_EQ(years, (std::vector<std::string>{"2005", "2006", "2007"}));
  EXPECT_THAT(all_words({page}), testing::HasSubstr("planning"));
}

TEST(ComparisonPages, SayWhatChangedInWords) {
  const std::string words = all_words(all_pages(3, Paper::a4));
  for (const char* said : {"Changed since 2005", "0.20 mm lost", "no longer visible", "Next survey",
                           "Year by year", "Metal left"})
    EXPECT_NE(words.find(said), std::string::npos) << said;
}

}  // namespace
}  // namespace tinworm::scene
