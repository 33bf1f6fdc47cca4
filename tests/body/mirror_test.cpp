#include "body/mirror.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace tinworm::body {
namespace {

using geometry::Outline;
using geometry::Point;

TEST(View, HasItsAxes) {
  struct {
    View view;
    Axis first, second;
    View mirror;
  } const cases[] = {
      {View::left, Axis::along, Axis::up, View::right},
      {View::right, Axis::along, Axis::up, View::left},
      {View::top, Axis::along, Axis::across, View::top},
      {View::underneath, Axis::along, Axis::across, View::underneath},
      {View::frame, Axis::along, Axis::across, View::frame},
      {View::front, Axis::across, Axis::up, View::front},
      {View::rear, Axis::across, Axis::up, View::rear},
  };
  for (const auto& [view, first, second, mirror] : cases) {
    EXPECT_EQ(first_axis(view), first) << word(view);
    EXPECT_EQ(second_axis(view), second) << word(view);
    EXPECT_EQ(mirrored(view), mirror) << word(view);
  }
}

TEST(Mirrored, OutlineChangesTheSignOfYAlone) {
  const Outline outline{{{{1, 2}, {3, 4}, {0, 0}}}, {{{5, 6}}}};
  struct {
    View view;
    Point first, open;
  } const cases[] = {
      {View::left, {1, 2}, {5, 6}},    {View::right, {1, 2}, {5, 6}},
      {View::top, {1, -2}, {5, -6}},   {View::underneath, {1, -2}, {5, -6}},
      {View::frame, {1, -2}, {5, -6}}, {View::front, {-1, 2}, {-5, 6}},
      {View::rear, {-1, 2}, {-5, 6}},
  };
  for (const auto& [view, first, open] : cases) {
    const Outline twin = mirrored(outline, view);
    EXPECT_EQ(twin.rings[0][0], first) << word(view);
    EXPECT_EQ(twin.open[0][0], open) << word(view);
    EXPECT_FALSE(std::signbit(twin.rings[0][2].u) || std::signbit(twin.rings[0][2].v));
    EXPECT_EQ(mirrored(twin, view).rings, outline.rings);
  }
}

TEST(Mirrored, TwiceIsTheSameZone) {
  Zone zone;
  zone.number = 51;
  zone.extent = {{0, 1}, {-720, -650}, {2, 3}};
  zone.hides = {20, 53};
  zone.stations = {{"middle", {1, -2, 3}, {}}};
  zone.drawn = {{Layer::skin, View::left, "M0 0", {}, {}}};
  const Zone twin = mirrored(zone);
  EXPECT_EQ(twin.number, 52);
  EXPECT_EQ(twin.extent.y, (geometry::Interval{650, 720}));
  EXPECT_EQ(twin.drawn[0].view, View::right);
  const Zone again = mirrored(twin);
  EXPECT_EQ(again.number, 51);
  EXPECT_EQ(again.extent, zone.extent);
  EXPECT_EQ(again.hides, zone.hides);
  EXPECT_EQ(again.stations[0].at, zone.stations[0].at);
  EXPECT_EQ(again.drawn[0].view, View::left);
}

TEST(Mirrored, BoxTurnsWithItsAxis) {
  struct {
    Axis axis;
    double from, to;
    Point point;
  } const cases[] = {
      {Axis::along, 100, 300, {-7, 8}},    // (y, z)
      {Axis::across, -300, -100, {7, 8}},  // (x, z), and the run is along Y
      {Axis::up, 100, 300, {7, -8}},       // (x, y)
  };
  for (const auto& [axis, from, to, point] : cases) {
    Box box;
    box.axis = axis;
    box.from_mm = 100;
    box.to_mm = 300;
    box.points["a"] = {7, 8};
    box.walls = {{"a b", 51, {}}, {"b a", 20, {}}};
    const Box twin = mirrored(box);
    EXPECT_EQ(twin.from_mm, from) << word(axis);
    EXPECT_EQ(twin.to_mm, to) << word(axis);
    EXPECT_EQ(twin.points.at("a"), point) << word(axis);
    EXPECT_EQ(twin.walls[0].zone, 52);
    EXPECT_EQ(twin.walls[1].zone, 20);
  }
}

}  // namespace
}  // namespace tinworm::body
