// Distances in space between a mount and boxes.
#pragma once

#include "geometry/point.hpp"

namespace tinworm::geometry {

double distance_mm(const Point3& point, const Box3& box);  // 0 inside
double distance_mm(const Point3& a, const Point3& b);
double distance_mm(const Box3& a, const Box3& b);  // 0 where they touch
bool overlap(const Box3& a, const Box3& b);  // touching counts
Box3 hull(const Box3& a, const Box3& b);

}  // namespace tinworm::geometry
