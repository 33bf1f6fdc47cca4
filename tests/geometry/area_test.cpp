#include "geometry/area.hpp"

#include <cmath>
#include <limits>
#include <numbers>
#include <random>
#include <stdexcept>

#include <gtest/gtest.h>

#include "geometry/path.hpp"

namespace tinworm::geometry {
namespace {

Outline outline(std::string_view data) {
  return flatten(parse_path(data).value());
}

double shoelace(const Ring& ring) {
  double twice = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point& a = ring[i];
    const Point& b = ring[(i + 1) % ring.size()];
    twice += a.u * b.v - b.u * a.v;
  }
  return std::abs(twice) / 2;
}

TEST(Area, EvenOddRings) {
  const struct {
    std::string_view data;
    double area;
  } cases[] = {
      {"M0 0H4V3H0Z", 12},
      {"M0 0V3H4V0Z", 12},                                  // the other way round
      {"M0 0H4V3H0", 0},                                    // open
      {"M0 0H4V3H0ZM1 1H2V2H1Z", 11},                       // a hole
      {"M0 0H4V3H0ZM1 1V2H2V1Z", 11},                       // a hole, whichever way it runs
      {"M0 0H9V9H0ZM1 1H8V8H1ZM2 2H7V7H2Z", 81 - 49 + 25},  // an island in the hole
      {"M0 0H1V1H0ZM5 5H6V6H5Z", 2},                        // apart
      {"M0 0H4V4H0ZM2 0H6V4H2Z", 16},  // crossing: what both hold counts nothing
      {"M0 0L2 2V0L0 2Z", 2},          // a bow-tie: two triangles of 1
      {"M0 0H4Z", 0},
      {"M0 0H4H0Z", 0},
      {"M1 1Z", 0},
  };
  for (const auto& c : cases) EXPECT_NEAR(area(outline(c.data)), c.area, 1e-12) << c.data;
}

// One method against another: GEOS and the shoelace formula on star-shaped rings.
TEST(Area, AgreesWithTheShoelaceFormula) {
  std::mt19937 random(7);
  for (int round = 0; round < 200; ++round) {
    Ring ring;
    const int size = 3 + static_cast<int>(random() % 40);
    for (int i = 0; i < size; ++i) {
      const double angle = 2 * std::numbers::pi * i / size;
      const double radius = 100 + static_cast<double>(random() % 1000);
      ring.push_back({2000 + radius * std::cos(angle), -300 + radius * std::sin(angle)});
    }
    const double expected = shoelace(ring);
    EXPECT_NEAR(area(Outline{{ring}, {}}), expected, 1e-9 * expected);
  }
}

// Again one against another: strips of our own and GEOS's union.
TEST(Area, UnionOfRectanglesBothWays) {
  std::mt19937 random(11);
  const auto within = [&](int most) { return static_cast<double>(random() % most); };
  for (int round = 0; round < 100; ++round) {
    std::vector<Rect> rects;
    std::vector<Outline> outlines;
    for (int i = 0; i < 12; ++i) {
      const double u = within(50), v = within(50);
      rects.push_back({{u, u + 1 + within(20)}, {v, v + 1 + within(20)}});
      outlines.push_back(rectangle(rects.back()));
    }
    EXPECT_NEAR(union_area(rects), union_area(outlines), 1e-9);
  }
}

TEST(Area, UnionOfRectangles) {
  EXPECT_EQ(union_area(std::vector<Rect>{}), 0);
  EXPECT_EQ(union_area(std::vector<Outline>{}), 0);
  EXPECT_EQ(union_area(std::vector<Rect>{{{0, 2}, {0, 2}}, {{1, 3}, {1, 3}}}), 7);
  EXPECT_EQ(union_area(std::vector<Rect>{{{0, 2}, {0, 2}}, {{0, 2}, {0, 2}}}), 4);
  EXPECT_EQ(union_area(std::vector<Rect>{{{0, 0}, {0, 2}}, {{0, 2}, {1, 1}}}), 0);
}

TEST(Area, UnionOfIntervals) {
  const struct {
    std::vector<Interval> intervals;
    double length;
  } cases[] = {
      {{}, 0},
      {{{-3, 5}}, 8},
      {{{0, 2}, {5, 6}}, 3},
      {{{5, 6}, {0, 2}, {1, 3}}, 4},
      {{{0, 10}, {2, 3}}, 10},
      {{{0, 2}, {2, 4}}, 4},
      {{{1, 1}}, 0},
      {{{4, 1}}, 0},  // turned round: no length
      {{{0, 3}, {2, 1}}, 3},
  };
  for (const auto& c : cases) EXPECT_EQ(union_length(c.intervals), c.length);
}

TEST(Area, Overlap) {
  const Outline square = outline("M0 0H4V4H0Z");
  EXPECT_NEAR(overlap_area(square, outline("M3 3H9V9H3Z")), 1, 1e-12);
  EXPECT_NEAR(overlap_area(square, outline("M4 0H8V4H4Z")), 0, 1e-12);  // along an edge
  EXPECT_NEAR(overlap_area(square, outline("M8 8H9V9H8Z")), 0, 1e-12);
  EXPECT_NEAR(overlap_area(square, square), 16, 1e-12);
  EXPECT_NEAR(overlap_area(square, outline("M-1-1H5V5H-1ZM1 1H3V3H1Z")), 12, 1e-12);
}

TEST(Area, Bounds) {
  EXPECT_EQ(bounds(outline("M0 0H4V3H0ZM9-9L8 8")), (Rect{{0, 9}, {-9, 8}}));
  EXPECT_THROW(bounds(Outline{}), std::invalid_argument);
}

TEST(Area, ContainsCountsTheBoundaryAndLeavesHolesOut) {
  const Outline frame = outline("M0 0H9V9H0ZM3 3H6V6H3Z");
  const struct {
    Point point;
    bool inside;
  } cases[] = {
      {{1, 1}, true},  {{0, 0}, true},   {{9, 4}, true},      {{3, 4}, true},
      {{4, 4}, false}, {{10, 4}, false}, {{-1e-9, 4}, false},
  };
  for (const auto& c : cases) EXPECT_EQ(contains(frame, c.point), c.inside) << c.point.u;
  EXPECT_FALSE(contains(outline("M0 0H9V9H0"), {8, 4}));
}

TEST(Area, DistanceToAnOutline) {
  const Outline frame = outline("M0 0H9V9H0ZM3 3H6V6H3Z");
  EXPECT_EQ(distance_to(frame, {1, 1}), 0);
  EXPECT_EQ(distance_to(frame, {9, 9}), 0);
  EXPECT_EQ(distance_to(frame, {12, 13}), 5);
  EXPECT_EQ(distance_to(frame, {4, 4.5}), 1);  // within the hole
  EXPECT_EQ(distance_to(outline("M0 0H9"), {4, 3}), 3);
  EXPECT_EQ(distance_to(outline("M0 0H9V9H0ZM20 0V9"), {17, 4}), 3);
  EXPECT_EQ(distance_to(outline("M0 0"), {3, 4}), 5);
  EXPECT_EQ(distance_to(Outline{}, {3, 4}), std::numeric_limits<double>::infinity());
}

TEST(Area, SaysWhatIsWrongWithAnOutline) {
  const struct {
    std::string_view data;
    std::string reason;
    Point at;
  } cases[] = {
      {"M0 0H4V4H0Z", "", {}},
      {"M0 0H9V9H0ZM3 3H6V6H3Z", "", {}},  // a hole
      {"M0 0H1V1H0ZM5 5H6V6H5Z", "", {}},  // apart
      {"M0 0H1V1H0ZM1 0H2V1H1Z", "", {}},  // side by side
      {"M0 0L10 10H0L10 0Z", "Self-intersection", {5, 5}},
      {"M0 0H4V4", "no closed ring", {}},
      {"M3 3H4Z", "fewer than three points", {3, 3}},
      {"M3 3Z", "fewer than three points", {3, 3}},
      {"M0 0H4V4H0ZM0 0H4V4H0Z", "Two rings are the same", {0, 0}},
  };
  for (const auto& c : cases) {
    const auto found = invalid(outline(c.data));
    ASSERT_EQ(found.has_value(), !c.reason.empty()) << c.data;
    if (!found) continue;
    EXPECT_EQ(found->reason, c.reason) << c.data;
    EXPECT_EQ(found->at, c.at) << c.data;
  }
  EXPECT_TRUE(invalid(outline("M0 0H4H1Z")));  // flat
  const auto crossing = invalid(outline("M0 0H4V4H0ZM2 1H6V3H2Z"));
  ASSERT_TRUE(crossing);
  EXPECT_EQ(crossing->reason, "Two rings cross");
  EXPECT_EQ(crossing->at.u, 4);
}

TEST(Area, LargestCircleInside) {
  const struct {
    std::string_view data;
    Point centre;
    double radius;
  } cases[] = {
      {"M0 0H100V100H0Z", {50, 50}, 50},
      {"M0 0H30V40Z", {20, 10}, 10},  // right triangle 3-4-5: r = (a + b - c) / 2
      {"M0 0H100V20H20V100H0Z",
       {11.7157, 11.7157},
       11.7157},  // an L: 20 (2 - sqrt 2), in its corner
      {"M0 0H100", {50, 0}, 0},
      {"M0 0H100V.001H0Z", {50, .0005}, 0},  // thinner than the tolerance
  };
  for (const auto& c : cases) {
    const Inscribed circle = inscribed_circle(outline(c.data), 0.01);
    EXPECT_NEAR(circle.centre.u, c.centre.u, 0.05) << c.data;
    EXPECT_NEAR(circle.centre.v, c.centre.v, 0.05) << c.data;
    EXPECT_NEAR(circle.radius, c.radius, 0.01) << c.data;
  }
  const Inscribed around = inscribed_circle(outline("M0 0H100V100H0ZM40 40H60V60H40Z"), 0.01);
  EXPECT_GT(around.radius, 20);  // a corner's circle: beyond half the 40 between hole and side
  EXPECT_FALSE(contains(outline("M40 40H60V60H40Z"), around.centre));
}

TEST(Area, IntersectionKeepsPartsAndHoles) {
  const Outline frame = outline("M0 0H9V9H0ZM3 3H6V6H3Z");
  const Outline whole = intersection(frame, rectangle({{-1, 10}, {1, 8}}));
  EXPECT_EQ(whole.rings.size(), 2u);
  EXPECT_NEAR(area(whole), 9 * 7 - 9, 1e-12);
  const Outline parts = intersection(frame, rectangle({{-1, 10}, {4, 5}}));
  EXPECT_EQ(parts.rings.size(), 2u);
  EXPECT_NEAR(area(parts), 6, 1e-12);
  EXPECT_TRUE(intersection(frame, rectangle({{20, 21}, {4, 5}})).rings.empty());
  EXPECT_TRUE(intersection(frame, rectangle({{9, 10}, {4, 5}})).rings.empty());  // along an edge
}

TEST(Area, Rectangle) {
  EXPECT_EQ(bounds(rectangle({{1, 3}, {2, 7}})), (Rect{{1, 3}, {2, 7}}));
  EXPECT_EQ(area(rectangle({{1, 3}, {2, 7}})), 10);
}

}  // namespace
}  // namespace tinworm::geometry
