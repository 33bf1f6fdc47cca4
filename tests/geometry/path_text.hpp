// A parsed path as plain text, so that tests compare whole paths at a glance.
#pragma once

#include <cmath>
#include <string>

#include <fmt/core.h>

#include "geometry/path.hpp"

namespace tinworm::geometry {

struct SegmentText {
  // Rounded to 1e-6, and no "-0".
  static double tidy(double x) { return std::round(x * 1e6) / 1e6 + 0.0; }
  static std::string text(Point p) { return fmt::format("{},{}", tidy(p.u), tidy(p.v)); }
  std::string operator()(const MoveTo& s) const { return fmt::format("M{}", text(s.to)); }
  std::string operator()(const LineTo& s) const { return fmt::format("L{}", text(s.to)); }
  std::string operator()(const CubicTo& s) const {
    return fmt::format("C{} {} {}", text(s.control1), text(s.control2), text(s.to));
  }
  std::string operator()(const ArcTo& s) const {
    return fmt::format("A{},{} {} {:d}{:d} {}", tidy(s.rx), tidy(s.ry), tidy(s.rotation_deg),
                       s.large, s.sweep, text(s.to));
  }
  std::string operator()(const Close&) const { return "Z"; }
};

inline std::string to_text(const Path& path) {
  std::string text;
  for (const Segment& segment : path) {
    if (!text.empty()) text += ' ';
    text += std::visit(SegmentText{}, segment);
  }
  return text;
}

// The path read, or "offset: what; allowed".
inline std::string read(std::string_view data) {
  const auto path = parse_path(data);
  if (path) return to_text(*path);
  return fmt::format("{}: {}; {}", path.error().offset, path.error().what, path.error().allowed);
}

}  // namespace tinworm::geometry
