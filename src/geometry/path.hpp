// SVG path data: the full grammar of SVG 1.1 section 8.3 and SVG 2 chapter 9 (M L H V C S Q T A Z,
// upper and lower case, packed numbers, packed arc flags), into segments and then into polylines.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <tl/expected.hpp>

#include "geometry/point.hpp"

namespace tinworm::geometry {

struct MoveTo {
  Point to;
};
struct LineTo {
  Point to;
};
struct CubicTo {
  Point control1, control2, to;
};  // quadratics are raised to cubics
struct ArcTo {
  double rx = 0, ry = 0, rotation_deg = 0;
  bool large = false, sweep = false;  // sweep: the angle grows from the first axis to the second
  Point to;
};
struct Close {};
using Segment = std::variant<MoveTo, LineTo, CubicTo, ArcTo, Close>;
using Path = std::vector<Segment>;  // absolute coordinates

struct PathMistake {
  int offset = 0;       // bytes from the start of the path data
  std::string what;     // "a number is missing after L (1 of 2 read)"
  std::string allowed;  // what could stand there
};

// All figures and the points they lead to must be finite and within ±1e6. An empty path and "none"
// are mistakes. Arcs of no length are left out and arcs with a radius of 0 are lines, signs of
// radii are dropped (SVG 2, 9.5.1).
tl::expected<Path, PathMistake> parse_path(std::string_view data);

// Béziers cut into 32 equal steps of their parameter, arcs into equal steps of at most 5 degrees
// (radii too small are scaled up as SVG 2 B.2.5 tells). Points within 1e-6 of the one before are
// dropped, so are the last ones of a ring within that of its first. A subpath that doesn't end in Z
// is an open line, a lone M one of a single point.
Outline flatten(const Path& path);

}  // namespace tinworm::geometry
