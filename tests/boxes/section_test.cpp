#include "boxes/section.hpp"

#include <stdexcept>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tinworm::boxes {
namespace {

body::Box box(std::vector<std::string> walls) {
  body::Box box;
  box.points = {{"a", {0, 0}},   {"b", {100, 0}}, {"c", {100, 60}}, {"d", {0, 60}},
                {"m", {40, 0}},  {"n", {40, 60}}, {"e", {-20, 0}},  {"i", {20, 30}},
                {"p", {300, 0}}, {"q", {310, 0}}, {"r", {310, 10}}, {"s", {60, 20}},
                {"t", {80, 20}}, {"u", {80, 40}}};
  for (auto& wall : walls) box.walls.push_back({std::move(wall), 51, {}});
  return box;
}

std::vector<double> areas(const body::Box& box) {
  const Section plane = section(box);
  return cells(plane, pieces(plane, std::vector<double>(box.walls.size(), 1))).area_mm2;
}

TEST(Section, FindsTheCells) {
  const struct {
    std::vector<std::string> walls;
    std::vector<double> areas;
  } cases[] = {
      {{"a b c d a"}, {6000}},
      {{"a d c b a"}, {6000}},  // the other way round
      {{"a b", "b c", "c d", "d a"}, {6000}},
      {{"d a b c"}, {}},                         // open
      {{"a m b c n d a", "m n"}, {2400, 3600}},  // two cells
      {{"a b c d a", "m n"}, {6000}},            // m and n not named: they join nothing
      {{"a b c d a", "e a"}, {6000}},            // a flange outside
      {{"a b c d a", "a i"}, {6000}},            // a flange inside
      {{"a b c d a", "a b c d a"}, {6000}},      // two sheets on one another
      {{"a b c d a", "p q r p"}, {6000, 50}},    // apart
      {{"a b c d a", "s t u s"}, {6000, 200}},   // one inside another
      {{"a b c a", "a c d a"}, {3000, 3000}},
      {{"a m n d a", "m b c n"}, {2400, 3600}},
      {{}, {}},
  };
  for (const auto& c : cases) {
    EXPECT_THAT(areas(box(c.walls)), testing::UnorderedElementsAreArray(c.areas))
        << testing::PrintToString(c.walls);
  }
}

TEST(Section, KnowsTheCellsBesideEachPiece) {
  const Section plane = section(box({"a m b c n d a", "m n", "e a"}));
  const auto walls = pieces(plane, {1, 2, 3});
  const Cells found = cells(plane, walls);
  ASSERT_EQ(found.area_mm2.size(), 2u);
  int outer = 0, shared = 0, flanges = 0;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    const auto [left, right] = found.beside[i];
    if (left == right) {
      ++flanges;
      EXPECT_EQ(walls[i].sheet_mm, 3);
    } else if (left >= 0 && right >= 0) {
      ++shared;
      EXPECT_EQ(walls[i].sheet_mm, 2);
    } else {
      ++outer;
      EXPECT_EQ(walls[i].sheet_mm, 1);
    }
  }
  EXPECT_EQ(outer, 6);
  EXPECT_EQ(shared, 1);
  EXPECT_EQ(flanges, 1);
}

TEST(Section, SheetsOnOneAnotherAddUpAndNoSheetIsNoWall) {
  const Section plane = section(box({"a b", "b a", "b c"}));
  const auto two = pieces(plane, {1, 0.5, 0});
  ASSERT_EQ(two.size(), 1u);
  EXPECT_EQ(two[0].sheet_mm, 1.5);
  EXPECT_EQ(two[0].length_mm, 100);
}

TEST(Section, WidthIsDeveloped) {
  const Section plane = section(box({"a b c d", "a i"}));
  EXPECT_DOUBLE_EQ(width_mm(plane, 0), 260);
  EXPECT_DOUBLE_EQ(width_mm(plane, 1), std::hypot(20, 30));
}

TEST(Section, RefusesAPointTheBoxLacks) {
  EXPECT_THROW(section(box({"a x"})), std::out_of_range);
}

}  // namespace
}  // namespace tinworm::boxes
