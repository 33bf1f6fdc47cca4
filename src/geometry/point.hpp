// Points, boxes and outlines in body coordinates: X rearward from the front axle line, Y to the
// right, Z up from the ground, all in mm (ISO 4130 planes).
#pragma once

#include <algorithm>
#include <vector>

namespace tinworm::geometry {

struct Point {  // in the plane of a view: see body/view.hpp for which axes
  double u = 0;
  double v = 0;
  auto operator<=>(const Point&) const = default;
};

struct Point3 {
  double x_mm = 0;
  double y_mm = 0;
  double z_mm = 0;
  auto operator<=>(const Point3&) const = default;
};

struct Interval {
  double low = 0;
  double high = 0;
  double length() const { return high - low; }
  double middle() const { return (low + high) / 2; }
  double distance(double x) const { return std::max({low - x, x - high, 0.0}); }
  auto operator<=>(const Interval&) const = default;
};

struct Box3 {  // axis-parallel
  Interval x, y, z;
  auto operator<=>(const Box3&) const = default;
};

struct Rect {  // axis-parallel in a view's plane
  Interval u, v;
  auto operator<=>(const Rect&) const = default;
};

using Ring = std::vector<Point>;         // closed, last point not repeated
struct Outline {                         // one zone's drawing in one view: rings and open lines
  std::vector<Ring> rings;               // from subpaths that end in Z; holes by the even-odd rule
  std::vector<std::vector<Point>> open;  // subpaths that don't
};

}  // namespace tinworm::geometry
