#include "geometry/space.hpp"

#include <cmath>

namespace tinworm::geometry {
namespace {

Interval hull(const Interval& a, const Interval& b) {
  return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

}  // namespace

double distance_mm(const Point3& point, const Box3& box) {
  return std::hypot(box.x.distance(point.x_mm), box.y.distance(point.y_mm),
                    box.z.distance(point.z_mm));
}

double distance_mm(const Point3& a, const Point3& b) {
  return std::hypot(a.x_mm - b.x_mm, a.y_mm - b.y_mm, a.z_mm - b.z_mm);
}

Box3 hull(const Box3& a, const Box3& b) {
  return {hull(a.x, b.x), hull(a.y, b.y), hull(a.z, b.z)};
}

}  // namespace tinworm::geometry
