#include "geometry/geos.hpp"

#include <stdexcept>

namespace tinworm::geometry {
namespace {

void keep_message(const char* message, void* into) {
  *static_cast<std::string*>(into) = message;
}

}  // namespace

Geos::Geos() : context_(GEOS_init_r()), error_(std::make_unique<std::string>()) {
  GEOSContext_setErrorMessageHandler_r(context_, keep_message, error_.get());
}

Geos::~Geos() {
  GEOS_finish_r(context_);
}

void Geos::fail() const {
  throw std::runtime_error("geometry: " + *error_);
}

Geos::Shape Geos::own(GEOSGeometry* shape) const {
  if (shape == nullptr) fail();
  return Shape(shape, Freed{context_});
}

GEOSCoordSequence* Geos::sequence(const std::vector<Point>& points, bool closed) const {
  const auto size = static_cast<unsigned>(points.size());
  GEOSCoordSequence* made = GEOSCoordSeq_create_r(context_, size + (closed ? 1 : 0), 2);
  if (made == nullptr) fail();
  for (unsigned i = 0; i < size; ++i) {
    GEOSCoordSeq_setXY_r(context_, made, i, points[i].u, points[i].v);
  }
  if (closed) GEOSCoordSeq_setXY_r(context_, made, size, points[0].u, points[0].v);
  return made;
}

Geos::Shape Geos::point(Point at) const {
  return own(GEOSGeom_createPointFromXY_r(context_, at.u, at.v));
}

Geos::Shape Geos::ring(const Ring& points) const {
  Shape line = own(GEOSGeom_createLinearRing_r(context_, sequence(points, true)));
  return own(GEOSGeom_createPolygon_r(context_, line.release(), nullptr, 0));
}

Geos::Shape Geos::collection(std::vector<Shape> parts, int type) const {
  std::vector<GEOSGeometry*> given;
  for (Shape& part : parts) given.push_back(part.release());
  return own(GEOSGeom_createCollection_r(context_, type, given.data(),
                                         static_cast<unsigned>(given.size())));
}

std::vector<Geos::Shape> Geos::polygons(const GEOSGeometry* shape) const {
  std::vector<Shape> found;
  if (GEOSisEmpty_r(context_, shape) == 1) return found;
  if (GEOSGeomTypeId_r(context_, shape) == GEOS_POLYGON) {
    found.push_back(own(GEOSGeom_clone_r(context_, shape)));
  } else if (GEOSGeomTypeId_r(context_, shape) >= GEOS_MULTIPOINT) {
    for (int i = 0; i < GEOSGetNumGeometries_r(context_, shape); ++i) {
      for (Shape& part : polygons(GEOSGetGeometryN_r(context_, shape, i))) {
        found.push_back(std::move(part));
      }
    }
  }
  return found;
}

Geos::Shape Geos::even_odd(const Outline& outline) const {
  Shape whole = own(GEOSGeom_createEmptyPolygon_r(context_));
  for (const Ring& points : outline.rings) {
    if (points.size() < 3) continue;
    Shape next = ring(points);
    if (GEOSisValid_r(context_, next.get()) != 1) {
      const Shape made = own(GEOSMakeValid_r(context_, next.get()));
      next = collection(polygons(made.get()), GEOS_MULTIPOLYGON);
    }
    whole = GEOSisEmpty_r(context_, whole.get()) == 1
                ? std::move(next)
                : own(GEOSSymDifference_r(context_, whole.get(), next.get()));
  }
  return whole;
}

Geos::Shape Geos::lines(const Outline& outline) const {
  std::vector<Shape> parts;
  for (const auto& open : outline.open) {
    if (open.size() == 1) parts.push_back(point(open[0]));
    if (open.size() > 1) {
      parts.push_back(own(GEOSGeom_createLineString_r(context_, sequence(open, false))));
    }
  }
  return collection(std::move(parts), GEOS_GEOMETRYCOLLECTION);
}

double Geos::area(const Shape& shape) const {
  double area = 0;
  if (GEOSArea_r(context_, shape.get(), &area) != 1) fail();
  return area;
}

Ring Geos::points(const GEOSGeometry* line) const {
  const GEOSCoordSequence* from = GEOSGeom_getCoordSeq_r(context_, line);
  unsigned size = 0;
  if (from == nullptr || GEOSCoordSeq_getSize_r(context_, from, &size) != 1) fail();
  Ring ring(size > 0 ? size - 1 : 0);  // the last point is the first again
  for (unsigned i = 0; i < ring.size(); ++i) {
    GEOSCoordSeq_getXY_r(context_, from, i, &ring[i].u, &ring[i].v);
  }
  return ring;
}

Outline Geos::outline(const Shape& shape) const {
  Outline outline;
  for (const Shape& part : polygons(shape.get())) {
    outline.rings.push_back(points(GEOSGetExteriorRing_r(context_, part.get())));
    const int holes = GEOSGetNumInteriorRings_r(context_, part.get());
    for (int hole = 0; hole < holes; ++hole) {
      outline.rings.push_back(points(GEOSGetInteriorRingN_r(context_, part.get(), hole)));
    }
  }
  return outline;
}

}  // namespace tinworm::geometry
