// The other side of the car: Y changes sign, zones go to their pair numbers, left views to right.
#pragma once

#include "body/plan.hpp"

namespace tinworm::body {

// The centre line has no other side: zones below 41 stay as they are.
int mirrored_number(int number);
geometry::Point3 mirrored(const geometry::Point3& point);
geometry::Interval mirrored(const geometry::Interval& across);
Zone mirrored(const Zone& zone);  // `place` stays the twin's
Mount mirrored(const Mount& mount);
Box mirrored(const Box& box);  // the name stays

}  // namespace tinworm::body
