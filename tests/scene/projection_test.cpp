#include "scene/projection.hpp"

#include <gtest/gtest.h>

namespace tinworm::scene {
namespace {

using body::View;

// Where the nose, the car's left and the roof lie on paper.
TEST(Projection, EachViewIsTurnedTheRightWay) {
  struct Case {
    View view;
    geometry::Point from, to;
    double dx_mm, dy_mm;  // of to from from, at 1:20
    const char* why;
  };
  const Case cases[] = {
      {View::left, {1000, 300}, {-600, 300}, -80, 0, "nose to the left"},
      {View::left, {0, 0}, {0, 1000}, 0, -50, "roof up"},
      {View::right, {1000, 300}, {-600, 300}, 80, 0, "nose to the right"},
      {View::top, {1000, 0}, {-600, 0}, -80, 0, "nose to the left"},
      {View::top, {0, 0}, {0, -700}, 0, 35, "from above the car's left is below"},
      {View::underneath, {0, 0}, {0, -700}, 0, -35, "from below the car's left is above"},
      {View::frame, {0, 0}, {0, -700}, 0, -35, "as underneath"},
      {View::front, {0, 500}, {-700, 500}, 35, 0, "from ahead the car's left is at the right"},
      {View::rear, {0, 500}, {-700, 500}, -35, 0, "from behind the car's left is at the left"},
  };
  for (const Case& each : cases) {
    const Projection projection{each.view, 1.0 / 20, {100, 80}};
    const At from = projection.paper(each.from), to = projection.paper(each.to);
    EXPECT_NEAR(to.x_mm - from.x_mm, each.dx_mm, 1e-9) << each.why;
    EXPECT_NEAR(to.y_mm - from.y_mm, each.dy_mm, 1e-9) << each.why;
    const geometry::Point back = projection.body(to);
    EXPECT_NEAR(back.u, each.to.u, 1e-9);
    EXPECT_NEAR(back.v, each.to.v, 1e-9);
  }
}

}  // namespace
}  // namespace tinworm::scene
