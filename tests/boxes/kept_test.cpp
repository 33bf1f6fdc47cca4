#include "boxes/kept.hpp"

#include <algorithm>
#include <random>
#include <stdexcept>

#include <gtest/gtest.h>

namespace tinworm::boxes {
namespace {

// A sill 140 by 170 with a middle wall, 1450 long; four walls of three zones.
body::Box sill() {
  body::Box box;
  box.from_mm = 420;
  box.to_mm = 1870;
  box.points = {{"a", {-700, 130}}, {"b", {-700, 300}}, {"c", {-560, 300}},
                {"d", {-560, 130}}, {"m", {-640, 130}}, {"n", {-640, 300}}};
  for (const char* path : {"m a b n", "n c", "c d m", "m n"}) box.walls.push_back({path, 51, {}});
  return box;
}

std::vector<WallStrips> walls(std::vector<Strip> first = {}, std::vector<Strip> second = {}) {
  return {{1.1, std::move(first)}, {1.0, std::move(second)}, {1.0, {}}, {0.9, {}}};
}

std::vector<WallStrips> thinned(double k, double from_mm, double to_mm) {
  std::vector<WallStrips> all = walls();
  for (auto& wall : all) wall.strips = {{from_mm, to_mm, 1000, k}};
  return all;
}

TEST(Kept, ASoundBoxKeepsEverything) {
  const Kept all = kept(sill(), walls());
  EXPECT_DOUBLE_EQ(all.twist, 1);
  EXPECT_DOUBLE_EQ(all.bending, 1);
  EXPECT_EQ(all.weakest, (geometry::Interval{420, 1870}));
  EXPECT_DOUBLE_EQ(kept(sill(), walls({{0, 400, 50, 0}, {1900, 2000, 50, 0}})).twist, 1);  // beyond
}

TEST(Kept, UniformThinning) {
  for (const double k : {0.95, 0.8, 0.5, 0.3}) {
    const Kept left = kept(sill(), thinned(k, 0, 5000));
    EXPECT_NEAR(left.twist, k, 1e-3);
    EXPECT_NEAR(left.bending, k, 1e-12);
  }
}

TEST(Kept, TwistAddsInSeriesAndBendingIsTheWeakest) {
  const Kept half = kept(sill(), thinned(0.5, 420, 1145));
  EXPECT_NEAR(half.twist, 1 / (0.5 + 0.5 / 0.5), 1e-3);
  EXPECT_NEAR(half.bending, 0.5, 1e-12);
  EXPECT_EQ(half.weakest, (geometry::Interval{420, 1145}));
  auto steps = thinned(0.5, 420, 1145);
  for (auto& wall : steps) wall.strips.push_back({1500, 1600, 1000, 0.25});
  const Kept both = kept(sill(), steps);
  EXPECT_NEAR(both.twist, 1450 / (725 / 0.5 + 625 + 100 / 0.25), 1e-3);
  EXPECT_EQ(both.weakest, (geometry::Interval{1500, 1600}));
  EXPECT_NEAR(both.bending, 0.25, 1e-12);
}

TEST(Kept, ALongSlitOpensACell) {
  body::Box tube = sill();
  tube.from_mm = 0;
  tube.to_mm = 100000;
  tube.walls = {{"a b c d a", 51, {}}};
  const Kept left = kept(tube, {{1.1, {{0, 1e6, 1, 0}}}});
  EXPECT_LT(left.twist, 1e-3);
  EXPECT_GT(left.bending, 0.99);
}

TEST(Kept, MirrorAndOrderChangeNothing) {
  const std::vector<WallStrips> rusted =
      walls({{500, 900, 80, 0.4}, {700, 760, 30, 0}}, {{600, 1000, 40, 0.6}});
  const Kept one = kept(sill(), rusted);
  body::Box mirrored = sill();
  for (auto& [name, point] : mirrored.points) point.u = -point.u;
  body::Box turned = sill();
  std::vector<WallStrips> turned_walls = rusted;
  std::reverse(turned.walls.begin(), turned.walls.end());
  std::reverse(turned_walls.begin(), turned_walls.end());
  std::reverse(turned_walls.back().strips.begin(), turned_walls.back().strips.end());
  for (const Kept& other : {kept(mirrored, rusted), kept(turned, turned_walls)}) {
    EXPECT_NEAR(other.twist, one.twist, 1e-9);
    EXPECT_NEAR(other.bending, one.bending, 1e-9);
    EXPECT_EQ(other.weakest, one.weakest);
  }
  EXPECT_LT(one.twist, 1);
  EXPECT_LT(one.bending, 1);
}

TEST(Kept, WorseIsNeverMore) {
  std::mt19937 random(3);
  const auto any = [&](double most) { return most * static_cast<double>(random() % 1000) / 1000; };
  for (int round = 0; round < 200; ++round) {
    const double from = 420 + any(1000);
    Strip strip{from, from + 20 + any(400), 5 + any(150), 0.05 + any(0.9)};
    const Strip other{600, 800, 40, 0.7};
    const Kept before = kept(sill(), walls({strip, other}));
    Strip thinner = strip, wider = strip;
    thinner.lambda /= 2;
    wider.width_mm += 20;
    for (const Strip& worse : {thinner, wider}) {
      const Kept after = kept(sill(), walls({worse, other}));
      EXPECT_LE(after.twist, before.twist + 1e-12);
      EXPECT_LE(after.bending, before.bending + 1e-12);
      EXPECT_GE(after.twist, 0);
      EXPECT_GE(after.bending, 0);
    }
  }
}

TEST(Kept, AFlatWallHasNoStiffnessAboutItself) {
  body::Box plate;
  plate.to_mm = 100;
  plate.points = {{"a", {0, 0}}, {"b", {100, 0}}};
  plate.walls = {{"a b", 51, {}}};
  const Kept left = kept(plate, {{1, {{0, 100, 100, 0.5}}}});
  EXPECT_NEAR(left.bending, 0.5, 1e-12);
  EXPECT_NEAR(left.twist, 0.125, 1e-12);  // open: as the cube of its sheet
}

TEST(Kept, NothingLeftOfTheWholeSection) {
  body::Box plate;
  plate.to_mm = 100;
  plate.points = {{"a", {0, 0}}, {"b", {100, 0}}};
  plate.walls = {{"a b", 51, {}}};
  const Kept left = kept(plate, {{1, {{20, 40, 100, 0}}}});
  EXPECT_EQ(left.twist, 0);
  EXPECT_EQ(left.bending, 0);
}

TEST(Kept, RefusesWhatIsNoBox) {
  EXPECT_THROW(kept(sill(), {}), std::invalid_argument);
  EXPECT_THROW(kept(sill(), walls({{500, 600, 10, -0.1}})), std::invalid_argument);
  EXPECT_THROW(kept(sill(), walls({{500, 600, 10, 1.1}})), std::invalid_argument);
  auto no_sheet = walls();
  no_sheet[2].sheet_mm = 0;
  EXPECT_THROW(kept(sill(), no_sheet), std::invalid_argument);
  body::Box none = sill();
  none.to_mm = none.from_mm;
  EXPECT_THROW(kept(none, walls()), std::invalid_argument);
  body::Box point = sill();
  point.walls[1].path = "n n";
  EXPECT_THROW(kept(point, walls()), std::invalid_argument);
}

}  // namespace
}  // namespace tinworm::boxes
