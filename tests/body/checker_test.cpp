#include "body/checker.hpp"

#include <fmt/core.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "geometry/area.hpp"
#include "geometry/path.hpp"

namespace tinworm::body {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

Drawing drawing(Layer layer, View view, std::string path, int line) {
  return {layer, view, path, geometry::flatten(geometry::parse_path(path).value()), {line, 20}};
}

Drawing left(std::string path, int line) {
  return drawing(Layer::skin, View::left, std::move(path), line);
}

Zone zone(int number, std::string path, int line) {
  Zone zone;
  zone.number = number;
  zone.area_m2 = 0.3;
  zone.drawn = {left(std::move(path), line + 1)};
  const geometry::Rect around = geometry::bounds(zone.drawn[0].outline);
  zone.extent = {around.u, {-700, -600}, around.v};
  zone.place = {line, 3};
  return zone;
}

// A body 3000 long from X -500, 1500 wide, 1400 high, of two zones side by side: nothing is wrong.
Plan plan() {
  Plan plan;
  plan.size = {3000, 1500, 1400, 2000};
  plan.x = {-500, 2500};
  plan.zones = {zone(11, "M0 200H1000V600H0Z", 10), zone(12, "M1000 200H2000V600H1000Z", 20)};
  return plan;
}

Box box(std::vector<BoxWall> walls) {
  Box box;
  box.name = "sill";
  box.points = {{"a", {0, 0}}, {"b", {0, 100}}, {"c", {80, 100}}, {"d", {80, 0}}, {"m", {0, 50}}};
  box.walls = std::move(walls);
  return box;
}

std::vector<std::string> told(const Plan& plan) {
  std::vector<std::string> lines;
  for (const auto& p : check_plan(plan)) {
    lines.push_back(fmt::format("{}:{} {} | {} | {} | {}", p.place.line, p.place.column, p.what,
                                p.found, p.allowed, p.cure));
  }
  return lines;
}

TEST(Checker, ASoundPlanHasNoProblems) {
  Plan sound = plan();
  sound.zones[0].stations = {{"end", {-50, -650, 400}, {15, 5}}};  // 50 mm off its zone
  sound.zones[0].hides = {12};
  sound.mounts = {{"hanger", Carries::suspension, {970, -650, 650}, {11, 12}, {}, {30, 5}}};
  sound.boxes = {box({{"a m b c", 11, {40, 5}}, {"c d a", 12, {41, 5}}})};
  EXPECT_THAT(told(sound), IsEmpty());
  EXPECT_THAT(told(Plan{}), IsEmpty());
}

TEST(Checker, Outlines) {
  const struct {
    std::string path, problem;
  } cases[] = {
      {"M0 200H1000V600H0",
       "11:20 zone 11's outline in the left view, skin is open |  | closed outlines | end every "
       "part of its path with Z"},
      {"M0 200H1000V600H0ZM5 5",
       "11:20 zone 11's outline in the left view, skin is open |  | closed outlines | end every "
       "part of its path with Z"},
      {"M0 200L1000 600V200L0 600Z",
       "11:20 zone 11's outline in the left view, skin encloses no clear area | Self-intersection "
       "at 500,400 | rings that cross neither themselves nor each other | move the point or draw "
       "the parts one by one"},
      {"M0 200H1000Z",
       "11:20 zone 11's outline in the left view, skin encloses no clear area | fewer than three "
       "points at 0,200 | rings that cross neither themselves nor each other | move the point or "
       "draw the parts one by one"},
      {"M-531 200H1000V600H-531Z",
       "11:20 zone 11 lies outside the body in the left view, skin | X -531 to 1000 | X -530 to "
       "2530 | move the outline, or correct size"},
      {"M0 200H1000V1431H0Z",
       "11:20 zone 11 lies outside the body in the left view, skin | Z 200 to 1431 | Z -30 to "
       "1430 | move the outline, or correct size"},
  };
  for (const auto& c : cases) {
    Plan bad = plan();
    bad.zones[0] = zone(11, c.path, 10);
    EXPECT_THAT(told(bad), ElementsAre(c.problem));
  }
}

TEST(Checker, OutlinesWithinTheSpareAreLetBe) {
  for (const char* path : {"M-530 200H1000V600H-530Z", "M0-30H1000V1430H0Z"}) {
    Plan spare = plan();
    spare.zones[0] = zone(11, path, 10);
    EXPECT_THAT(told(spare), IsEmpty()) << path;
  }
}

TEST(Checker, SeenFromTopTheWidthCounts) {
  Plan bad = plan();
  bad.zones[0].drawn = {drawing(Layer::structure, View::top, "M0-781H1000V781H0Z", 11)};
  EXPECT_THAT(told(bad),
              ElementsAre("11:20 zone 11 lies outside the body in the top view, structure | Y -781 "
                          "to 781 | Y -780 to 780 | move the outline, or correct size"));
}

TEST(Checker, SpanAndDrawnNowhere) {
  Plan bad = plan();
  bad.zones[0].extent.y = {-900, -600};
  bad.zones[1].drawn.clear();
  EXPECT_THAT(
      told(bad),
      ElementsAre("10:3 zone 11's span leaves the body | Y -900 to -600 | Y -780 to 780 | "
                  "correct its span, or size",
                  "20:3 zone 12 is drawn nowhere |  |  | give it an outline under drawn, in "
                  "at least one view"));
}

TEST(Checker, Overlap) {
  const struct {
    std::string path;   // beside zone 11, which ends at X 1000
    std::string share;  // none: let be
  } cases[] = {
      {"M980 200H1980V600H980Z", ""},     // 2 % of both
      {"M979 200H1979V600H979Z", "2.1"},  // just over
      {"M990 200H1090V600H990Z", "10"},   // of the smaller
      {"M0 200H1000V600H0Z", "100"},      // the same
      {"M400 300H600V500H400Z", "100"},   // within
  };
  for (const auto& c : cases) {
    Plan bad = plan();
    bad.zones[1] = zone(12, c.path, 20);
    const std::string line = "21:20 zones 11 and 12 overlap in the left view, skin | " + c.share +
                             " % of the smaller | at most 2 % | draw them to a common edge";
    if (c.share.empty()) {
      EXPECT_THAT(told(bad), IsEmpty()) << c.path;
    } else {
      EXPECT_THAT(told(bad), ElementsAre(line)) << c.path;
    }
  }
  Plan apart = plan();  // the same place on another sheet is no overlap
  apart.zones[1].drawn = {drawing(Layer::structure, View::left, "M0 200H1000V600H0Z", 21)};
  EXPECT_THAT(told(apart), IsEmpty());
  Plan hole = plan();  // nor is a zone in the hole of another
  hole.zones[0] = zone(11, "M0 200H1000V600H0ZM100 300H300V500H100Z", 10);
  hole.zones[1] = zone(12, "M100 300H300V500H100Z", 20);
  EXPECT_THAT(told(hole), IsEmpty());
}

TEST(Checker, Pairs) {
  Plan bad = plan();
  bad.zones = {zone(51, "M0 200H1000V600H0Z", 10), zone(53, "M1000 200H2000V600H1000Z", 20),
               zone(54, "M1000 200H2000V600H1000Z", 30)};
  bad.zones[2].drawn[0].view = View::right;
  bad.zones[2].area_m2 = 0.304;
  EXPECT_THAT(told(bad),
              ElementsAre("10:3 zone 51 has no pair |  |  | add 52: {mirror: 51}, or number it 10 "
                          "to 39 if it is single",
                          "30:3 zone 54's area differs from that of its pair 53 | 0.304 and 0.3 m2 "
                          "| at most 1 % apart | mirror one from the other, or correct an area"));
  bad.zones[2].area_m2 = 0.303;
  EXPECT_EQ(told(bad).size(), 1u);
}

TEST(Checker, Hides) {
  Plan bad = plan();
  bad.zones[0].hides = {11, 12, 77};
  EXPECT_THAT(told(bad),
              ElementsAre("10:3 zone 11 hides itself |  |  | name the zones behind it",
                          "10:3 zone 11 hides a zone this body lacks | 77 |  | correct the number, "
                          "or add the zone"));
}

TEST(Checker, AcrossTheMiddleHidesBothSides) {
  Plan plan;
  plan.zones = {zone(11, "M0 200H1000V600H0Z", 10), zone(53, "M0 200H1000V600H0Z", 20),
                zone(54, "M0 200H1000V600H0Z", 30)};
  plan.zones[0].hides = {53};
  const auto of_hides = [&](geometry::Interval y) {
    plan.zones[0].extent.y = y;
    std::vector<std::string> lines;
    for (const std::string& each : told(plan))
      if (each.find("across the middle") != std::string::npos) lines.push_back(each);
    return lines;
  };
  EXPECT_THAT(of_hides({-600, 600}),
              ElementsAre("10:3 zone 11 lies across the middle and hides zone 53 alone |  | 53 and "
                          "54 | add 54 to its `hides`"));
  EXPECT_THAT(of_hides({-300, 100}), testing::SizeIs(1)) << "a quarter on the other side";
  EXPECT_THAT(of_hides({-301, 99}), IsEmpty()) << "it lies to the left";
  EXPECT_THAT(of_hides({100, 600}), IsEmpty()) << "it lies to the right";
  plan.zones[0].hides = {54, 53};
  EXPECT_THAT(of_hides({-600, 600}), IsEmpty());
}

TEST(Checker, Joins) {
  Plan bad = plan();
  bad.zones[0].joins = {11, 12, 77};
  EXPECT_THAT(told(bad),
              ElementsAre("10:3 zone 11 joins itself |  |  | name the zones it is welded or bolted "
                          "to",
                          "10:3 zone 11 joins a zone this body lacks | 77 |  | correct the number, "
                          "or add the zone"));
  bad.zones[0].joins = {12};
  bad.zones[1].extent.x = {1061, 2000};
  EXPECT_THAT(told(bad),
              ElementsAre("10:3 zone 11 joins zone 12, which lies 61 mm away |  | at most 60 mm | "
                          "correct the number, or the outlines and span of one of them"));
}

TEST(Checker, Openings) {
  Plan bad = plan();
  bad.openings = {{"carpet-left", "carpet up", 20, {5, 3}}};
  EXPECT_THAT(
      told(bad),
      ElementsAre("5:3 opening carpet-left shows no zone |  |  | name it with `open` at the "
                  "zones that it shows"));
  bad.zones[0].opening = "carpet-left";
  EXPECT_THAT(told(bad), IsEmpty());
  bad.zones[1].opening = "carpet-lft";
  EXPECT_THAT(told(bad),
              ElementsAre("20:3 zone 12 is seen by an opening the plan lacks | carpet-lft | "
                          "carpet-left | add it under openings, or correct `open`"));
}

TEST(Checker, Conditions) {
  Plan bad = plan();
  bad.options = {{"steering", {"left", "right"}}};
  bad.mounts = {{"hanger", Carries::suspension, {970, -650, 600}, {11}, {}, {30, 5}, {}}};
  bad.mounts[0].when = Condition{"steering", "right", {30, 70}};
  EXPECT_THAT(told(bad), IsEmpty());
  bad.mounts[0].when->choice = "middle";
  EXPECT_THAT(
      told(bad),
      ElementsAre("30:70 `when` names an option or a choice that the plan lacks | steering: "
                  "middle |  | add it under options, or correct it here"));
}

TEST(Checker, Stations) {
  Plan bad = plan();
  bad.zones[0].stations = {{"front end", {0, -650, 1600}, {15, 5}},
                           {"middle", {1061, -650, 400}, {16, 5}},
                           {"rear end", {1060, -650, 400}, {17, 5}}};  // just near enough
  EXPECT_THAT(
      told(bad),
      ElementsAre(
          "15:5 station front end of zone 11 lies outside the body | 0, -650, 1600 | X -530 "
          "to 2530, Y -780 to 780, Z -30 to 1430 | correct its x, y, z",
          "16:5 station middle of zone 11 lies 61 mm from its zone | 1061, -650, 400 | X 0 "
          "to 1000, Y -700 to -600, Z 200 to 600, and 60 mm round it | correct its x, y, z, "
          "or the zone's outlines and span"));
}

TEST(Checker, Mounts) {
  Plan bad = plan();
  bad.mounts = {{"jack point", Carries::jack, {0, 900, 100}, {11}, {}, {30, 5}},
                {"hanger", Carries::suspension, {500, -650, 661}, {11}, {}, {31, 5}},
                {"belt", Carries::belts, {500, -650, 600}, {11, 77}, {}, {32, 5}}};
  EXPECT_THAT(
      told(bad),
      ElementsAre(
          "30:5 mount jack point lies outside the body | 0, 900, 100 | X -530 to 2530, Y "
          "-780 to 780, Z -30 to 1430 | correct its at",
          "31:5 mount hanger lies 61 mm from zone 11, on which it stands | 500, -650, 661 | "
          "X 0 to 1000, Y -700 to -600, Z 200 to 600, and 60 mm round it | correct its at "
          "or on, or the zone's outlines and span",
          "32:5 mount belt stands on a zone this body lacks | 77 |  | correct the number, or "
          "add the zone"));
}

TEST(Checker, Walls) {
  const struct {
    const char* path;
    int zone;
    const char* problem;
  } cases[] = {
      {"a b", 11,
       "40:5 wall a b of box sill passes point m without naming it |  |  | write m between a and "
       "b, "
       "or move it"},
      {"c b a d", 11,
       "40:5 wall c b a d of box sill passes point m without naming it |  |  | write m between b "
       "and "
       "a, or move it"},
      {"c d", 77,
       "40:5 wall c d of box sill belongs to a zone this body lacks | 77 |  | correct the number, "
       "or "
       "add the zone"},
      {"c x", 11,
       "40:5 wall c x of box sill goes by a point the box lacks | x | a b c d m | correct the "
       "wall's "
       "path, or add the point"},
      {"c", 11,
       "40:5 a wall of box sill has a part without length | c | the names of two points or more, "
       "none twice in a row | name where it begins and ends"},
      {"c d d", 11,
       "40:5 a wall of box sill has a part without length | c d d | the names of two points or "
       "more, "
       "none twice in a row | name where it begins and ends"},
  };
  for (const auto& c : cases) {
    Plan bad = plan();
    bad.boxes = {box({{c.path, c.zone, {40, 5}}})};
    EXPECT_THAT(told(bad), ElementsAre(c.problem));
  }
  Plan near = plan();
  near.boxes = {box({{"a b", 11, {40, 5}}})};
  near.boxes[0].points["m"] = {0.6, 50};  // beside the wall, not on it
  EXPECT_THAT(told(near), IsEmpty());
}

TEST(Checker, TellsEverythingAtOnceInOrderOfTheFile) {
  Plan bad = plan();
  bad.zones[1].hides = {77};
  bad.zones[0].drawn.clear();
  bad.mounts = {{"belt", Carries::belts, {500, -650, 600}, {78}, {}, {2, 5}}};
  bad.boxes = {box({{"c d", 79, {1, 5}}})};
  std::vector<int> lines;
  for (const auto& problem : check_plan(bad)) lines.push_back(problem.place.line);
  EXPECT_THAT(lines, ElementsAre(1, 2, 10, 20));
}

TEST(Coverage, IsTheShareOfTheSilhouette) {
  Plan covered = plan();
  covered.zones[1].drawn.push_back(
      drawing(Layer::structure, View::underneath, "M0 0H100V100H0Z", 22));
  Line strong;
  strong.weight = Weight::strong;
  strong.shapes = {left("M-500 200H1500V1000H-500ZM0 300H100V400H0Z", 1).outline};
  Line light;
  light.shapes = {left("M-500 0H2500V1400H-500Z", 1).outline};
  covered.lines[View::left] = {strong, light};
  const auto shares = coverage(covered);
  ASSERT_EQ(shares.size(), 2u);
  EXPECT_EQ(shares[0].layer, Layer::skin);
  EXPECT_EQ(shares[0].view, View::left);
  EXPECT_TRUE(shares[0].has_silhouette);
  // The zones' 2000 x 400 of the silhouette's 2000 x 800 and their own 500 x 400 beyond it.
  EXPECT_NEAR(shares[0].drawn_share, 0.8 / 1.8, 1e-12);
  EXPECT_EQ(shares[1].layer, Layer::structure);
  EXPECT_EQ(shares[1].view, View::underneath);
  EXPECT_FALSE(shares[1].has_silhouette);
  EXPECT_EQ(shares[1].drawn_share, 1);
  covered.zones[1].drawn[1] =
      drawing(Layer::structure, View::underneath, "M0 0H100V100H0ZM0 0H50V100H0Z", 22);
  EXPECT_NEAR(coverage(covered).at(1).drawn_share, 0.5, 1e-12);  // open within itself
  EXPECT_THAT(coverage(Plan{}), IsEmpty());
}

TEST(Coverage, LinesOfTheOtherLayerDoNotCount) {
  Plan covered = plan();
  Line strong;
  strong.weight = Weight::strong;
  strong.layer = Layer::structure;
  strong.shapes = {left("M-500 200H2500V1000H-500Z", 1).outline};
  covered.lines[View::left] = {strong};
  EXPECT_FALSE(coverage(covered).at(0).has_silhouette);
}

}  // namespace
}  // namespace tinworm::body
