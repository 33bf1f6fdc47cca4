#include "body/reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bad_cases.hpp"
#include "body/small_plan.hpp"

namespace tinworm::body {
namespace {

using geometry::Interval;
using geometry::Point;
using geometry::Point3;
using testing::ElementsAre;

Plan plan_of(std::string_view yaml) {
  const Reading reading = read_plan(yaml);
  EXPECT_EQ(yaml::to_text(reading.problems, "plan", yaml), "");
  return reading.plan.value();
}

// `small_plan` with `from` exchanged for `to`.
std::string changed(std::string_view from, std::string_view to) {
  std::string text(small_plan);
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

TEST(Reader, ReadsTheHead) {
  const Plan plan = plan_of(small_plan);
  EXPECT_EQ(plan.name, "small-body");
  EXPECT_EQ(plan.version, 2);
  EXPECT_EQ(plan.title, "Small body for tests");
  EXPECT_EQ(plan.construction, Construction::unitary);
  EXPECT_EQ(plan.size.length_mm, 3950);
  EXPECT_EQ(plan.size.width_mm, 1560);
  EXPECT_EQ(plan.size.height_mm, 1390);
  EXPECT_EQ(plan.size.wheelbase_mm, 2400);
  EXPECT_EQ(plan.x, (Interval{-700, 3250}));  // of the left view's strong line
}

TEST(Reader, ReadsZonesInOrderOfNumber) {
  const Plan plan = plan_of(small_plan);
  std::vector<int> numbers;
  for (const Zone& zone : plan.zones) numbers.push_back(zone.number);
  EXPECT_THAT(numbers, ElementsAre(20, 51, 52, 53, 54));
  EXPECT_EQ(plan.zone(99), nullptr);

  const Zone& sill = *plan.zone(51);
  EXPECT_EQ(sill.name, "outer sill");
  EXPECT_EQ(sill.also, "rocker");
  EXPECT_EQ(sill.role, Role::main);
  EXPECT_EQ(sill.joined, Joined::welded);
  EXPECT_EQ(sill.build, Build::box);
  EXPECT_EQ(sill.runs, Axis::along);
  EXPECT_EQ(sill.sheet_mm, 1.1);
  EXPECT_EQ(sill.area_m2, 0.31);
  EXPECT_EQ(sill.starts, "bottom seam and both ends, from inside");
  EXPECT_THAT(sill.hides, ElementsAre(20, 53));
  EXPECT_EQ(sill.side(), Side::left);
  EXPECT_EQ(sill.pair(), 52);
  EXPECT_EQ(sill.place, (yaml::Place{25, 3}));
  ASSERT_EQ(sill.stations.size(), 2u);
  EXPECT_EQ(sill.stations[1].name, "rear end");
  EXPECT_EQ(sill.stations[1].at, (Point3{1610, -715, 210}));
}

TEST(Reader, ReadsTheJobOfAPartAndMirrorsIt) {
  const Plan plan = plan_of(changed("runs: along\n", "runs: along\n    job: outer-sill\n"));
  EXPECT_EQ(plan.zone(51)->job, Job::outer_sill);
  EXPECT_EQ(plan.zone(52)->job, Job::outer_sill);
  EXPECT_EQ(plan.zone(53)->job, Job::other_part) << "not told, whatever its name";
}

TEST(Reader, TakesTheExtentFromOutlinesAndSpan) {
  const Plan plan = plan_of(small_plan);
  const geometry::Box3 sill{{420, 1870}, {-725, -640}, {130, 300}};
  EXPECT_EQ(plan.zone(51)->extent, sill);
  const geometry::Box3 panel{{-600, -580}, {-500, 500}, {300, 500}};
  EXPECT_EQ(plan.zone(20)->extent, panel);
}

// Areas by hand: 1450 x 200 mm and 1000 x 200 mm.
TEST(Reader, TakesTheLargestOutlineForAnAreaLeftOut) {
  const Plan plan = plan_of(small_plan);
  EXPECT_NEAR(plan.zone(53)->area_m2, 0.29, 1e-12);
  EXPECT_NEAR(plan.zone(20)->area_m2, 0.20, 1e-12);
}

// 20 SWG is 0.036 in (BS 3737:1964), 0.9144 mm.
TEST(Reader, TakesAGaugeForTheSheet) {
  EXPECT_NEAR(plan_of(small_plan).zone(20)->sheet_mm, 0.9144, 1e-9);
}

TEST(Reader, WritesMirroredZonesOutWhole) {
  const Plan plan = plan_of(small_plan);
  const Zone& right = *plan.zone(52);
  EXPECT_EQ(right.name, "outer sill");
  EXPECT_EQ(right.side(), Side::right);
  EXPECT_EQ(right.area_m2, 0.31);
  EXPECT_THAT(right.hides, ElementsAre(20, 54));
  EXPECT_EQ(right.stations[0].at, (Point3{610, 720, 210}));
  const geometry::Box3 extent{{420, 1870}, {640, 725}, {130, 300}};
  EXPECT_EQ(right.extent, extent);
  EXPECT_EQ(right.place, (yaml::Place{43, 3}));
  ASSERT_EQ(right.drawn.size(), 3u);
  EXPECT_EQ(right.drawing(Layer::skin, View::left), nullptr);
  const Drawing* side = right.drawing(Layer::skin, View::right);
  ASSERT_NE(side, nullptr);
  EXPECT_EQ(side->outline.rings[0][1], (Point{1870, 130}));
  const Drawing* below = right.drawing(Layer::structure, View::underneath);
  ASSERT_NE(below, nullptr);
  EXPECT_EQ(below->outline.rings[0][0], (Point{420, 720}));
}

TEST(Reader, TakesAMirrorBeforeItsTwin) {
  std::string text = changed("  52: {mirror: 51}\n", "");
  text.replace(text.find("  20:\n"), 0, "  52: {mirror: 51}\n");
  EXPECT_EQ(plan_of(text).zone(52)->extent.y, (Interval{640, 725}));
}

TEST(Reader, ReadsLines) {
  const Plan plan = plan_of(small_plan);
  const auto& left = plan.lines.at(View::left);
  ASSERT_EQ(left.size(), 3u);
  EXPECT_EQ(left[0].weight, Weight::strong);
  EXPECT_FALSE(left[0].layer);
  EXPECT_FALSE(left[0].filled_with_paper);
  EXPECT_EQ(left[0].shapes.at(0).open.at(0)[1], (Point{3250, 200}));
  EXPECT_EQ(left[1].layer, Layer::skin);
  EXPECT_TRUE(left[1].filled_with_paper);
  EXPECT_EQ(left[2].weight, Weight::ghost);
  EXPECT_EQ(left[2].layer, Layer::structure);
  const auto& right = plan.lines.at(View::right);
  ASSERT_EQ(right.size(), 3u);
  EXPECT_EQ(right[1].path, left[1].path);
  EXPECT_EQ(plan.lines.at(View::top).size(), 1u);
}

TEST(Reader, ReadsMountsAndTheirMirrors) {
  const Plan plan = plan_of(small_plan);
  ASSERT_EQ(plan.mounts.size(), 3u);
  EXPECT_EQ(plan.mounts[0].what, "front spring hanger");
  EXPECT_EQ(plan.mounts[0].carries, Carries::suspension);
  EXPECT_THAT(plan.mounts[0].on, ElementsAre(53, 20));
  EXPECT_EQ(plan.mounts[1].what, "front spring hanger");
  EXPECT_EQ(plan.mounts[1].at, (Point3{1510, 610, 320}));
  EXPECT_THAT(plan.mounts[1].on, ElementsAre(54, 20));
  EXPECT_EQ(plan.mounts[2].carries, Carries::towing);
}

TEST(Reader, ReadsBoxesAndTheirMirrors) {
  const Plan plan = plan_of(small_plan);
  ASSERT_EQ(plan.boxes.size(), 2u);
  const Box& left = plan.boxes[0];
  EXPECT_EQ(left.name, "left sill");
  EXPECT_EQ(left.axis, Axis::along);
  EXPECT_EQ(left.from_mm, 420);
  EXPECT_EQ(left.to_mm, 1870);
  EXPECT_EQ(left.points.at("c"), (Point{-560, 300}));
  ASSERT_EQ(left.walls.size(), 2u);
  EXPECT_EQ(left.walls[0].path, "a b c");
  EXPECT_EQ(left.walls[0].zone, 51);
  const Box& right = plan.boxes[1];
  EXPECT_EQ(right.name, "right sill");
  EXPECT_EQ(right.points.at("c"), (Point{560, 300}));
  EXPECT_EQ(right.walls[1].zone, 54);
}

TEST(Reader, TakesAFrameViewOfASeparateChassis) {
  std::string text = changed("construction: unitary", "construction: separate-chassis");
  text.replace(text.find("underneath: "), 11, "frame:");
  const Plan plan = plan_of(text);
  EXPECT_NE(plan.zone(51)->drawing(Layer::structure, View::frame), nullptr);
}

// 41 lines of 4,801 points, and nine of the others, stay under 200,000.
TEST(Reader, BoundsThePointsOfAPlan) {
  std::string curves, lines = "lines:\n  front:\n";
  for (int i = 0; i < 150; ++i) curves += "c1 2 3 4 5 6";
  for (int i = 0; i < 50; ++i) lines += "    - {weight: light, path: M0 0" + curves + "}\n";
  const std::string yaml = changed("lines:\n", lines);
  const Reading reading = read_plan(yaml);
  EXPECT_FALSE(reading.plan);
  ASSERT_EQ(reading.problems.size(), 14u);  // the last nine lines and all five drawings
  EXPECT_EQ(
      reading.problems[0].what,
      "a line of the front view: with this path the plan has 201651 points once curves are cut");
}

TEST(Reader, GivesNoPlanWithAProblem) {
  const Reading reading = read_plan(changed("role: skin", "role: skim"));
  EXPECT_FALSE(reading.plan);
  ASSERT_EQ(reading.problems.size(), 1u);
  EXPECT_EQ(reading.problems[0].place, (yaml::Place{18, 11}));
}

TEST(BadFiles, OfBodyPlansAreRefusedInThePinnedWords) {
  const auto problems = [](std::string_view source) { return read_plan(source).problems; };
  expect_bad_files("shape-body", 50, problems);
  expect_bad_files("meaning-body", 10, problems);
}

}  // namespace
}  // namespace tinworm::body
