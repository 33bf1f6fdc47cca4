// GEOS behind a door: one context for one sum, everything freed at its end. Only area.cpp uses it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <geos_c.h>

#include "geometry/point.hpp"

namespace tinworm::geometry {

class Geos {
 public:
  struct Freed {
    GEOSContextHandle_t context;
    void operator()(GEOSGeometry* shape) const { GEOSGeom_destroy_r(context, shape); }
  };
  using Shape = std::unique_ptr<GEOSGeometry, Freed>;

  Geos();
  ~Geos();
  Geos(const Geos&) = delete;
  Geos& operator=(const Geos&) = delete;

  GEOSContextHandle_t context() const { return context_; }

  // Takes what a GEOS function returned. Throws std::runtime_error with GEOS's words where it is
  // null: with finite figures that is a fault of ours, not of a user's file.
  Shape own(GEOSGeometry* shape) const;

  Shape point(Point at) const;
  Shape ring(const Ring& points) const;          // a polygon as it stands: it may cross itself
  Shape even_odd(const Outline& outline) const;  // sound, with holes; open lines left out
  Shape lines(const Outline& outline) const;     // the open lines
  Shape collection(std::vector<Shape> parts, int type) const;

  double area(const Shape& shape) const;
  Outline outline(const Shape& shape) const;  // its polygons; points and lines in it left out

 private:
  GEOSCoordSequence* sequence(const std::vector<Point>& points, bool closed) const;
  std::vector<Shape> polygons(const GEOSGeometry* shape) const;  // in collections at any depth
  Ring points(const GEOSGeometry* line) const;
  [[noreturn]] void fail() const;

  GEOSContextHandle_t context_;
  std::unique_ptr<std::string> error_;
};

}  // namespace tinworm::geometry
