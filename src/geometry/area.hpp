// Areas, unions, overlaps and validity of outlines, by GEOS through its C interface.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/point.hpp"

namespace tinworm::geometry {

// Square units of the input throughout.
double area(const Outline& outline);  // open lines count nothing
double union_area(const std::vector<Outline>& outlines);
double union_area(const std::vector<Rect>& rects);
double overlap_area(const Outline& a, const Outline& b);
double union_length(std::vector<Interval> intervals);  // of the real line
Rect bounds(const Outline& outline);                 // of rings and open lines; at least one point
bool contains(const Outline& outline, Point point);  // inside or on the boundary
double distance_to(const Outline& outline, Point point);  // 0 inside

// Why an outline is no simple polygon, with the point GEOS names; none if it is sound.
struct Invalid {
  std::string reason;
  Point at;
};
std::optional<Invalid> invalid(const Outline& outline);

// The visually central point: the centre of the largest circle inside, to `tolerance` units.
struct Inscribed {
  Point centre;
  double radius = 0;
};
Inscribed inscribed_circle(const Outline& outline, double tolerance);

// `a` cut to `b`; for clipping a spot's rectangle to its zone.
Outline intersection(const Outline& a, const Outline& b);
Outline rectangle(const Rect& rect);

}  // namespace tinworm::geometry
