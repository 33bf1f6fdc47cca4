#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>

namespace tinworm::geometry {
namespace {

Interval hull(const Interval& a, const Interval& b) {
  return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

double apart(const Interval& a, const Interval& b) {
  return std::max({0.0, a.low - b.high, b.low - a.high});
}

}  // namespace

double distance_mm(const Point3& point, const Box3& box) {
  return std::hypot(box.x.distance(point.x_mm), box.y.distance(point.y_mm),
                    box.z.distance(point.z_mm));
}

double distance_mm(const Point3& a, const Point3& b) {
  return std::hypot(a.x_mm - b.x_mm, a.y_mm - b.y_mm, a.z_mm - b.z_mm);
}

double distance_mm(const Box3& a, const Box3& b) {
  return std::hypot(apart(a.x, b.x), apart(a.y, b.y), apart(a.z, b.z));
}

bool overlap(const Box3& a, const Box3& b) {
  return distance_mm(a, b) <= 0;
}

Box3 hull(const Box3& a, const Box3& b) {
  return {hull(a.x, b.x), hull(a.y, b.y), hull(a.z, b.z)};
}

}  // namespace tinworm::geometry
