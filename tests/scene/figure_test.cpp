// What stands beside a place, and the letters of the worst.
#include "scene/figure.hpp"

#include <algorithm>

#include <gtest/gtest.h>

#include "scene/fixture.hpp"

namespace tinworm::scene {
namespace {

using survey::Rust;

// One finding at a station of the left outer sill, and what is written at it.
std::string written(const std::function<void(survey::Survey&, survey::Spot&)>& change,
                    bool skin = false) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  survey::Spot spot = fixture::spot("rear end", Rust::scale, {1900, -740, 220}, {180, 60});
  change(survey, spot);
  survey.zones[51].found = {spot};
  const auto result = fixture::weighed(survey);
  const weighing::Spot& weighed = result.zone(51)->spots.at(0);
  return skin ? skin_words(result, weighed) : figure_words(result, weighed);
}

TEST(Figure, MeasuredJudgedAndDamage) {
  const auto measured = [](survey::Survey& survey, survey::Spot& spot) {
    survey.zones[51].reference_mm = {1.0, 1.0, 1.0};
    spot.metal_mm = {0.80, 0.80, 0.80};
  };
  EXPECT_EQ(written(measured), "80 %");
  EXPECT_EQ(written(measured, true), "80 %");
  const std::string judged = written([](auto&, auto&) {});
  EXPECT_TRUE(judged.starts_with("\u2248")) << judged;
  EXPECT_TRUE(judged.ends_with(" %")) << judged;
  EXPECT_EQ(written([](auto&, auto&) {}, true), "scale");
  const auto hole = [](survey::Survey&, survey::Spot& spot) {
    spot.rust = Rust::hole;
    spot.hole = survey::Size{40, 25};
  };
  EXPECT_EQ(written(hole), "hole 40\u00d725");
  EXPECT_EQ(written(hole, true), "hole 40\u00d725");
  EXPECT_EQ(written([](survey::Survey&, survey::Spot& spot) { spot.crack_mm = 35; }), "crack 35");
  EXPECT_EQ(written([](survey::Survey&, survey::Spot& spot) {
              spot.rust = Rust::hole;
              spot.size.reset();
            }),
            "hole");
}

TEST(Figure, NoMoreThanNineLettersWorstFirst) {
  const auto result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  const auto worst = lettered(result);
  ASSERT_EQ(worst.size(), 9U);
  for (std::size_t i = 1; i < worst.size(); ++i) EXPECT_LT(worst[i - 1]->rank, worst[i]->rank);
  EXPECT_EQ(letter_of(result, *worst[0]), "A");
  EXPECT_EQ(letter_of(result, *worst[8]), "I");
  for (const weighing::Spot* spot : result.ranked()) {
    const bool one_of_them = std::find(worst.begin(), worst.end(), spot) != worst.end();
    EXPECT_EQ(letter_of(result, *spot).empty(), !one_of_them) << spot->rank;
  }
}

}  // namespace
}  // namespace tinworm::scene
