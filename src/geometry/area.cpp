#include "geometry/area.hpp"

#include <cmath>
#include <limits>
#include <stdexcept>

#include "geometry/geos.hpp"

namespace tinworm::geometry {
namespace {

// GEOS answers 2 where it failed.
bool answer(char said) {
  if (said == 2) throw std::runtime_error("geometry: a comparison of outlines failed");
  return said == 1;
}

void widen(Rect& rect, Point point) {
  rect.u = {std::min(rect.u.low, point.u), std::max(rect.u.high, point.u)};
  rect.v = {std::min(rect.v.low, point.v), std::max(rect.v.high, point.v)};
}

Point first_point(const Geos& geos, const Geos::Shape& shape) {
  Point at;
  if (GEOSisEmpty_r(geos.context(), shape.get()) == 1) return at;
  const Geos::Shape point = geos.own(GEOSPointOnSurface_r(geos.context(), shape.get()));
  GEOSGeomGetX_r(geos.context(), point.get(), &at.u);
  GEOSGeomGetY_r(geos.context(), point.get(), &at.v);
  return at;
}

std::optional<Invalid> invalid_ring(const Geos& geos, const Ring& ring) {
  if (ring.size() < 3) return Invalid{"fewer than three points", ring.empty() ? Point{} : ring[0]};
  const Geos::Shape polygon = geos.ring(ring);
  char* reason = nullptr;
  GEOSGeometry* where = nullptr;
  const char valid = GEOSisValidDetail_r(geos.context(), polygon.get(), 0, &reason, &where);
  Invalid found;
  if (reason != nullptr) {
    found.reason = reason;
    GEOSFree_r(geos.context(), reason);
  }
  if (where != nullptr) found.at = first_point(geos, geos.own(where));
  if (answer(valid)) return std::nullopt;
  return found;
}

// Rings may lie apart or within each other; parts of one inside and parts outside is no drawing.
std::optional<Invalid> crossing(const Geos& geos, const Ring& a, const Ring& b) {
  const auto context = geos.context();
  const Geos::Shape one = geos.ring(a), other = geos.ring(b);
  const bool crosses = answer(GEOSOverlaps_r(context, one.get(), other.get()));
  if (!crosses && !answer(GEOSEquals_r(context, one.get(), other.get()))) return std::nullopt;
  const Geos::Shape edge = geos.own(GEOSBoundary_r(context, one.get()));
  const Geos::Shape other_edge = geos.own(GEOSBoundary_r(context, other.get()));
  const Geos::Shape met = geos.own(GEOSIntersection_r(context, edge.get(), other_edge.get()));
  return Invalid{crosses ? "Two rings cross" : "Two rings are the same", first_point(geos, met)};
}

}  // namespace

double area(const Outline& outline) {
  const Geos geos;
  return geos.area(geos.even_odd(outline));
}

double union_area(const std::vector<Outline>& outlines) {
  const Geos geos;
  std::vector<Geos::Shape> parts;
  for (const Outline& outline : outlines) parts.push_back(geos.even_odd(outline));
  const Geos::Shape all = geos.collection(std::move(parts), GEOS_GEOMETRYCOLLECTION);
  return geos.area(geos.own(GEOSUnaryUnion_r(geos.context(), all.get())));
}

// Strip by strip between the edges: the same sum however the rectangles are ordered.
double union_area(const std::vector<Rect>& rects) {
  std::vector<double> edges;
  for (const Rect& rect : rects) {
    if (rect.u.length() > 0) edges.insert(edges.end(), {rect.u.low, rect.u.high});
  }
  std::sort(edges.begin(), edges.end());
  double area = 0;
  for (std::size_t i = 1; i < edges.size(); ++i) {
    std::vector<Interval> across;
    for (const Rect& rect : rects) {
      if (rect.u.low <= edges[i - 1] && edges[i] <= rect.u.high) across.push_back(rect.v);
    }
    area += (edges[i] - edges[i - 1]) * union_length(std::move(across));
  }
  return area;
}

double overlap_area(const Outline& a, const Outline& b) {
  const Geos geos;
  const Geos::Shape one = geos.even_odd(a), other = geos.even_odd(b);
  return geos.area(geos.own(GEOSIntersection_r(geos.context(), one.get(), other.get())));
}

double union_length(std::vector<Interval> intervals) {
  std::sort(intervals.begin(), intervals.end());
  double length = 0;
  double reached = -std::numeric_limits<double>::infinity();
  for (const Interval& interval : intervals) {
    const double from = std::max(interval.low, reached);
    if (interval.high <= from) continue;
    length += interval.high - from;
    reached = interval.high;
  }
  return length;
}

Rect bounds(const Outline& outline) {
  constexpr double infinity = std::numeric_limits<double>::infinity();
  Rect rect{{infinity, -infinity}, {infinity, -infinity}};
  for (const Ring& ring : outline.rings) {
    for (const Point& point : ring) widen(rect, point);
  }
  for (const auto& line : outline.open) {
    for (const Point& point : line) widen(rect, point);
  }
  if (rect.u.low > rect.u.high) throw std::invalid_argument("geometry: bounds of an empty outline");
  return rect;
}

bool contains(const Outline& outline, Point point) {
  const Geos geos;
  const Geos::Shape shape = geos.even_odd(outline), at = geos.point(point);
  return answer(GEOSIntersects_r(geos.context(), shape.get(), at.get()));
}

double distance_to(const Outline& outline, Point point) {
  const Geos geos;
  const Geos::Shape at = geos.point(point);
  double nearest = std::numeric_limits<double>::infinity();
  for (const Geos::Shape& shape : {geos.even_odd(outline), geos.lines(outline)}) {
    double distance = 0;
    if (GEOSisEmpty_r(geos.context(), shape.get()) == 1) continue;
    if (GEOSDistance_r(geos.context(), shape.get(), at.get(), &distance) != 1) {
      throw std::runtime_error("geometry: a distance to an outline failed");
    }
    nearest = std::min(nearest, distance);
  }
  return nearest;
}

std::optional<Invalid> invalid(const Outline& outline) {
  const Geos geos;
  if (outline.rings.empty()) return Invalid{"no closed ring", {}};
  for (const Ring& ring : outline.rings) {
    if (auto found = invalid_ring(geos, ring)) return found;
  }
  for (std::size_t i = 0; i < outline.rings.size(); ++i) {
    for (std::size_t j = i + 1; j < outline.rings.size(); ++j) {
      if (auto found = crossing(geos, outline.rings[i], outline.rings[j])) return found;
    }
  }
  return std::nullopt;
}

Inscribed inscribed_circle(const Outline& outline, double tolerance) {
  const Geos geos;
  const auto context = geos.context();
  const Geos::Shape shape = geos.even_odd(outline);
  const Rect around = bounds(outline);
  // GEOS lays a first grid with the shorter side as its step: a sliver would take it for ever.
  if (geos.area(shape) <= 0 || std::min(around.u.length(), around.v.length()) < tolerance) {
    return {{around.u.middle(), around.v.middle()}, 0};
  }
  const Geos::Shape spoke = geos.own(GEOSMaximumInscribedCircle_r(context, shape.get(), tolerance));
  Inscribed circle;
  const Geos::Shape centre = geos.own(GEOSGeomGetStartPoint_r(context, spoke.get()));
  GEOSGeomGetX_r(context, centre.get(), &circle.centre.u);
  GEOSGeomGetY_r(context, centre.get(), &circle.centre.v);
  if (GEOSLength_r(context, spoke.get(), &circle.radius) != 1) {
    throw std::runtime_error("geometry: an inscribed circle failed");
  }
  return circle;
}

Outline intersection(const Outline& a, const Outline& b) {
  const Geos geos;
  const Geos::Shape one = geos.even_odd(a), other = geos.even_odd(b);
  return geos.outline(geos.own(GEOSIntersection_r(geos.context(), one.get(), other.get())));
}

Outline rectangle(const Rect& rect) {
  return {{{{rect.u.low, rect.v.low},
            {rect.u.high, rect.v.low},
            {rect.u.high, rect.v.high},
            {rect.u.low, rect.v.high}}},
          {}};
}

}  // namespace tinworm::geometry
