#include "geometry/space.hpp"

#include <gtest/gtest.h>

namespace tinworm::geometry {
namespace {

constexpr Box3 box{{0, 10}, {-5, 5}, {100, 120}};

TEST(Space, DistanceToABox) {
  const struct {
    Point3 from;
    double mm;
  } cases[] = {
      {{5, 0, 110}, 0},   // inside
      {{10, 5, 120}, 0},  // on a corner
      {{-3, 0, 110}, 3},  // before a face
      {{13, 9, 110}, 5},  // beside an edge: 3, 4
      {{12, 8, 126}, 7},  // beyond a corner: 2, 3, 6
      {{-2, -8, 94}, 7},  // beyond the opposite one
  };
  for (const auto& c : cases) EXPECT_DOUBLE_EQ(distance_mm(c.from, box), c.mm);
}

TEST(Space, DistanceOfPoints) {
  EXPECT_DOUBLE_EQ(distance_mm(Point3{1, 2, 3}, Point3{3, 5, 9}), 7);
  EXPECT_DOUBLE_EQ(distance_mm(Point3{1, 2, 3}, Point3{1, 2, 3}), 0);
}

TEST(Space, HullHoldsBothAndNoMore) {
  const Box3 other{{-4, 2}, {0, 9}, {110, 115}};
  EXPECT_EQ(hull(box, other), (Box3{{-4, 10}, {-5, 9}, {100, 120}}));
  EXPECT_EQ(hull(other, box), hull(box, other));
  EXPECT_EQ(hull(box, box), box);
}

}  // namespace
}  // namespace tinworm::geometry
