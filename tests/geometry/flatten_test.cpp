#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "geometry/path.hpp"

namespace tinworm::geometry {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

Outline outline(std::string_view data) {
  return flatten(parse_path(data).value());
}

TEST(Flatten, RingsEndInZAndOpenLinesDoNot) {
  const Outline both = outline("M0 0H4V3ZM9 9L8 8");
  EXPECT_THAT(both.rings, ElementsAre(Ring{{0, 0}, {4, 0}, {4, 3}}));
  EXPECT_THAT(both.open, ElementsAre(Ring{{9, 9}, {8, 8}}));
}

TEST(Flatten, KeepsNoPointTwice) {
  const struct {
    std::string_view data;
    Ring ring;
  } cases[] = {
      {"M0 0H4V3L0 0Z", {{0, 0}, {4, 0}, {4, 3}}},
      {"M0 0L0 0H4H4V3L0 0L0 0Z", {{0, 0}, {4, 0}, {4, 3}}},
      {"M0 0H4V3L1e-9 0Z", {{0, 0}, {4, 0}, {4, 3}}},
      {"M0 0H4V3L1e-3 0Z", {{0, 0}, {4, 0}, {4, 3}, {1e-3, 0}}},
      {"M5 5Z", {{5, 5}}},
  };
  for (const auto& c : cases) {
    EXPECT_THAT(outline(c.data).rings, ElementsAre(c.ring)) << c.data;
    EXPECT_THAT(outline(c.data).open, IsEmpty()) << c.data;
  }
}

TEST(Flatten, SubpathsAfterZBeginAtItsStart) {
  const Outline after = outline("M5 5h1v1zl-1-1");
  EXPECT_THAT(after.rings, SizeIs(1));
  EXPECT_THAT(after.open, ElementsAre(Ring{{5, 5}, {4, 4}}));
  EXPECT_THAT(outline("M5 5h1v1zz").rings, SizeIs(1));
  EXPECT_THAT(outline("M5 5h1v1zh-1v-1z").rings,
              ElementsAre(Ring{{5, 5}, {6, 5}, {6, 6}}, Ring{{5, 5}, {4, 5}, {4, 4}}));
}

TEST(Flatten, ALoneMoveIsALineOfOnePoint) {
  EXPECT_THAT(outline("M1 2").open, ElementsAre(Ring{{1, 2}}));
  EXPECT_THAT(outline("M1 2M3 4L5 6").open, ElementsAre(Ring{{1, 2}}, Ring{{3, 4}, {5, 6}}));
}

TEST(Flatten, BeziersTakeThirtyTwoEqualSteps) {
  const auto cubic = outline("M0 0C0 32 32 32 32 0").open.at(0);
  ASSERT_THAT(cubic, SizeIs(33));
  EXPECT_NEAR(cubic[16].u, 16, 1e-12);
  EXPECT_NEAR(cubic[16].v, 24, 1e-12);
  // A quadratic has B(t) = 2 s t P1 + t² P2, raised to a cubic or not.
  const auto quadratic = outline("M0 0Q16 32 32 0").open.at(0);
  ASSERT_THAT(quadratic, SizeIs(33));
  for (int i = 0; i <= 32; ++i) {
    const double t = i / 32.0;
    EXPECT_NEAR(quadratic[i].u, 32 * t, 1e-12);
    EXPECT_NEAR(quadratic[i].v, 64 * t * (1 - t), 1e-12);
  }
}

TEST(Flatten, ArcsTakeStepsOfAtMostFiveDegrees) {
  const struct {
    std::string_view data;
    std::size_t steps;
  } cases[] = {
      {"M100 0A100 100 0 0 1 0 100", 18},        // 90 degrees
      {"M100 0A100 100 0 0 1 -100 0", 36},       // 180
      {"M100 0A100 100 0 1 0 0 100", 54},        // 270
      {"M100 0A100 100 0 0 1 99.9 4.4710", 1},   // under 5
      {"M100 0A100 100 0 0 1 99 14.106736", 2},  // 8.1
  };
  for (const auto& c : cases) {
    EXPECT_THAT(outline(c.data).open.at(0), SizeIs(c.steps + 1)) << c.data;
  }
}

// Every point of an arc lies on its ellipse, and the ends are the path's own figures.
TEST(Flatten, ArcPointsLieOnTheEllipse) {
  const auto points = outline("M0 0A40 20 30 0 1 50 20").open.at(0);
  EXPECT_EQ(points.front(), (Point{0, 0}));
  EXPECT_EQ(points.back(), (Point{50, 20}));
  // The centre from three points turned back by 30 degrees and squeezed to a circle.
  const auto squeezed = [](Point p) {
    const double c = std::cos(std::numbers::pi / 6), s = std::sin(std::numbers::pi / 6);
    return Point{(c * p.u + s * p.v) / 40, (-s * p.u + c * p.v) / 20};
  };
  const Point a = squeezed(points[0]), b = squeezed(points[points.size() / 2]),
              c = squeezed(points.back());
  const double d = 2 * (a.u * (b.v - c.v) + b.u * (c.v - a.v) + c.u * (a.v - b.v));
  const double aa = a.u * a.u + a.v * a.v, bb = b.u * b.u + b.v * b.v, cc = c.u * c.u + c.v * c.v;
  const Point centre{(aa * (b.v - c.v) + bb * (c.v - a.v) + cc * (a.v - b.v)) / d,
                     (aa * (c.u - b.u) + bb * (a.u - c.u) + cc * (b.u - a.u)) / d};
  for (const Point& point : points) {
    const Point q = squeezed(point);
    EXPECT_NEAR(std::hypot(q.u - centre.u, q.v - centre.v), 1, 1e-9);
  }
}

}  // namespace
}  // namespace tinworm::geometry
