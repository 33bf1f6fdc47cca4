// Where places crowd, a detail shows each of them at 1:10.
#include "scene/details.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scene/fixture.hpp"
#include "scene/random_survey.hpp"

namespace tinworm::scene {
namespace {

std::vector<Sheet> whole_sheets(const weighing::Result& result) {
  std::vector<Sheet> sheets;
  for (const SheetKind kind : {SheetKind::structure, SheetKind::skin, SheetKind::frame})
    for (Sheet& sheet : lay_out(kind, *result.body, Paper::a4)) sheets.push_back(std::move(sheet));
  return sheets;
}

std::vector<Sheet> details(const weighing::Result& result) {
  return details_of(whole_sheets(result), result, {}, fixture::measured);
}

// So many places along the tunnel, 80 mm apart: within 20 mm of paper at 1:30.
weighing::Result crowded(int places) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  for (int i = 0; i < places; ++i) {
    survey.zones[20].found.push_back(fixture::spot(
        "place " + std::to_string(i), survey::Rust::scale, {1100.0 + 80 * i, 20, 300}, {40, 30}));
  }
  return fixture::weighed(survey);
}

TEST(Details, SixPlacesCrowdFiveDont) {
  EXPECT_TRUE(details(crowded(5)).empty());
  const auto result = crowded(6);
  const auto pages = details(result);
  ASSERT_EQ(pages.size(), 1u);
  EXPECT_EQ(pages[0].scale, 10);
  ASSERT_EQ(pages[0].views.size(), 1u);
  const PlacedView& view = pages[0].views[0];
  ASSERT_TRUE(view.part);
  EXPECT_THAT(view.name, testing::StartsWith("Detail: "));
  EXPECT_THAT(view.name, testing::HasSubstr("tunnel"));
  for (const weighing::Spot* spot : result.ranked())
    EXPECT_TRUE(view.area.contains(
        view.projection.project({*spot->at.x_mm, *spot->at.y_mm, *spot->at.z_mm})))
        << spot->name;
}

TEST(Details, StandOnAPageOfTheirOwnWithTheirLetters) {
  const auto pages = fixture::drawn(crowded(6));
  ASSERT_EQ(pages.size(), 3u);
  EXPECT_EQ(pages[2].title, "Details");
  for (const char* letter : {"A", "B", "C", "D", "E", "F"}) {
    int count = 0;
    for (const Text* text : texts(pages[2]))
      count += text->says == Says::rank && text->text == letter;
    EXPECT_EQ(count, 2) << letter;
  }
  EXPECT_EQ(fixture::drawn(crowded(5)).size(), 2u);
}

TEST(Details, AreTwoAtMostAndWithinTheDrawing) {
  int seen = 0;
  for (unsigned seed = 1; seed <= 30; ++seed) {
    for (const Sheet& sheet :
         details(fixture::weighed(fixture::random_survey(fixture::plan(), seed)))) {
      EXPECT_LE(sheet.views.size(), 2u);
      for (const PlacedView& view : sheet.views) {
        EXPECT_TRUE(sheet.drawing.contains(view.area)) << seed;
        ++seen;
      }
      if (sheet.views.size() == 2) {
        EXPECT_FALSE(sheet.views[0].area.overlaps(sheet.views[1].area)) << seed;
      }
    }
  }
  EXPECT_GT(seen, 5);
}

}  // namespace
}  // namespace tinworm::scene
