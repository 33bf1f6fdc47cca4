// The map on part of a page: in its room, legible, its key in words that tell things apart.
#include "scene/small_map.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scene/fixture.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {
namespace {

using fixture::measured;
using testing::HasSubstr;
using testing::Not;

TEST(RowedSheet, StandsInItsRoomAtTheLargestScaleThatDoes) {
  const auto plan = fixture::plan();
  const struct {
    double width_mm, height_mm;
    int scale;  // 0: none
  } cases[] = {{400, 300, 40}, {230, 130, 40}, {173, 105, 50}, {173, 60, 60},
               {173, 45, 100}, {173, 30, 100}, {173, 20, 0},   {30, 200, 0}};
  for (const auto& each : cases) {
    const Area room{22, 150, each.width_mm, each.height_mm};
    const auto sheet = lay_out_rows(SheetKind::structure, *plan, room);
    ASSERT_EQ(sheet.has_value(), each.scale != 0) << each.width_mm << " x " << each.height_mm;
    if (!sheet) continue;
    EXPECT_EQ(sheet->scale, each.scale) << each.width_mm << " x " << each.height_mm;
    EXPECT_TRUE(room.grown(1e-9).contains(sheet->drawing));
    for (const PlacedView& view : sheet->views) EXPECT_TRUE(room.grown(1e-9).contains(view.area));
    for (std::size_t i = 0; i < sheet->views.size(); ++i)
      for (std::size_t k = 0; k < i; ++k)
        EXPECT_FALSE(sheet->views[i].area.overlaps(sheet->views[k].area));
  }
}

TEST(RowedSheet, NoneOfASheetThatTheBodyLacks) {
  EXPECT_FALSE(lay_out_rows(SheetKind::frame, *fixture::plan(), {0, 0, 400, 300}));
}

TEST(SmallMap, StaysInItsRoomAndTakesWhatItSays) {
  const auto result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  for (const double height_mm : {60.0, 80.0, 120.0}) {
    Page page;
    const Area room{22, 150, 173, height_mm};
    const double used_mm = draw_small_map(page, result, room, measured);
    EXPECT_GT(used_mm, 0.5 * height_mm);
    EXPECT_LE(used_mm, height_mm);
    const auto words = texts(page);
    for (std::size_t i = 0; i < words.size(); ++i) {
      EXPECT_TRUE(room.grown(0.5).contains(words[i]->area)) << words[i]->text;
      for (std::size_t k = 0; k < i; ++k) {
        EXPECT_FALSE(words[i]->area.grown(-0.2).overlaps(words[k]->area.grown(-0.2)))
            << words[i]->text << " and " << words[k]->text;
      }
    }
  }
}

TEST(SmallMap, DrawsNothingWhereThereIsNoRoom) {
  Page page;
  const auto result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  EXPECT_EQ(draw_small_map(page, result, {22, 150, 173, 20}, measured), 0);
  EXPECT_TRUE(page.layers.empty());
}

// Without meanings, words must say which repair, and what a broken edge is.
TEST(SmallMap, TheKeyTellsRepairsApart) {
  Page page;
  draw_small_map(page, fixture::weighed(fixture::busy_survey(fixture::plan())), {22, 150, 173, 100},
                 measured);
  const std::string key = fixture::said(page, Says::legend);
  for (const char* words :
       {"holed", "not seen", "broken edge: judged", "repaired, can be relied on",
        "repaired, not known if reliable", "repaired, can\u2019t be relied on"})
    EXPECT_THAT(key, HasSubstr(words));
  for (const char* words : {"dashed tint", "ring", "main", "station"})
    EXPECT_THAT(key, Not(HasSubstr(words)));
}

// The ranks that stand on the map, in order.
std::string ranks_on(const Page& page) {
  std::string ranks;
  for (const Text* text : texts(page))
    if (text->text.find_first_not_of("0123456789") == std::string::npos) ranks += text->text;
  std::ranges::sort(ranks);
  return ranks;
}

TEST(SmallMap, RingsTheWorstThreeAlone) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  int found = 0;
  for (const body::Zone& zone : survey.body->zones) {
    if (zone.role != body::Role::main || zone.stations.empty() || found == 7) continue;
    const body::Station& station = zone.stations.front();
    survey::Spot spot = fixture::spot(station.name, survey::Rust::scale, fixture::at(station),
                                      {60.0 + 20 * found, 40});
    spot.hand = survey::Hand::gives;
    survey.zones[zone.number].found = {spot};
    ++found;
  }
  ASSERT_EQ(found, 7);
  const weighing::Result result = fixture::weighed(survey);
  ASSERT_EQ(result.ranked().size(), 7u);
  Page page;
  draw_small_map(page, result, {22, 150, 173, 100}, measured);
  EXPECT_EQ(ranks_on(page), "123");
}

// A repair over its whole zone is told by its edge: of the worst three, the others have a ring.
TEST(SmallMap, RingsNoRepairOverItsWholeZone) {
  Page page;
  const weighing::Result result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  draw_small_map(page, result, {22, 150, 173, 100}, measured);
  std::string marked;
  for (const weighing::Zone& zone : result.zones)
    for (const weighing::Spot& spot : zone.spots)
      if (spot.rank > 0 && spot.rank <= 3 && !spot.is_repair) marked += std::to_string(spot.rank);
  std::ranges::sort(marked);
  ASSERT_EQ(marked.size(), 2u) << "one of the three is a repair";
  EXPECT_EQ(ranks_on(page), marked);
}

}  // namespace
}  // namespace tinworm::scene
