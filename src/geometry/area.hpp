// Areas, unions, overlaps and validity of outlines, by GEOS through its C interface. Rings count by
// the even-odd rule, a ring that crosses itself too; open lines have no area.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/point.hpp"

namespace tinworm::geometry {

// Square units of the input throughout.
double area(const Outline& outline);
double union_area(const std::vector<Outline>& outlines);
double union_area(const std::vector<Rect>& rects);
double overlap_area(const Outline& a, const Outline& b);
double union_length(std::vector<Interval> intervals);  // of the real line
Rect bounds(const Outline& outline);  // of rings and open lines; throws std::invalid_argument
                                      // without any point
bool contains(const Outline& outline, Point point);  // inside or on the boundary
double distance_to(const Outline& outline,
                   Point point);  // 0 inside; to open lines as well; infinite if empty

// Why the rings are no sound drawing (none at all, too few points, a ring crossing itself or
// another, two alike), with the point GEOS names; none if they are. Rings apart or one in another
// are sound. Open lines are not judged.
struct Invalid {
  std::string reason;
  Point at;
};
std::optional<Invalid> invalid(const Outline& outline);

// The visually central point: the centre of the largest circle inside, to `tolerance` units. Of an
// outline thinner than that: the middle of its bounds, radius 0.
struct Inscribed {
  Point centre;
  double radius = 0;
};
Inscribed inscribed_circle(const Outline& outline, double tolerance);

// `a` cut to `b`; for clipping a spot's rectangle to its zone.
Outline intersection(const Outline& a, const Outline& b);
Outline rectangle(const Rect& rect);

}  // namespace tinworm::geometry
