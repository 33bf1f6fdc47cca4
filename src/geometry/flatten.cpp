#include <cmath>
#include <numbers>

#include "geometry/path.hpp"

namespace tinworm::geometry {
namespace {

constexpr int bezier_steps = 32;
constexpr double arc_step_rad = 5 * std::numbers::pi / 180;
// Points nearer than this to the one before are one point: what rounding leaves of a relative path
// that comes back to its start would otherwise cross itself there.
constexpr double same_point = 1e-6;

bool same(Point a, Point b) {
  return std::abs(a.u - b.u) < same_point && std::abs(a.v - b.v) < same_point;
}

// An arc from `from` by its centre, SVG 2 appendix B.2.4; radii scaled up as B.2.5 tells.
struct Ellipse {
  Point centre;
  double rx = 0, ry = 0, cosine = 1, sine = 0;
  double first_rad = 0, turn_rad = 0;

  Point at(double angle_rad) const {
    const double x = rx * std::cos(angle_rad), y = ry * std::sin(angle_rad);
    return {centre.u + cosine * x - sine * y, centre.v + sine * x + cosine * y};
  }
};

Ellipse ellipse(Point from, const ArcTo& arc) {
  constexpr double pi = std::numbers::pi;
  const double rotation = std::fmod(arc.rotation_deg, 360.0) * pi / 180;
  const double cosine = std::cos(rotation), sine = std::sin(rotation);
  const double half_u = (from.u - arc.to.u) / 2, half_v = (from.v - arc.to.v) / 2;
  const double x = cosine * half_u + sine * half_v, y = -sine * half_u + cosine * half_v;
  const double short_by = std::hypot(x / arc.rx, y / arc.ry);
  const double scale = std::max(short_by, 1.0);
  const double rx = arc.rx * scale, ry = arc.ry * scale;

  const double within = std::hypot(x / rx, y / ry);
  const double reach = std::sqrt(std::max(0.0, 1 / (within * within) - 1));
  const double way = arc.large == arc.sweep ? -reach : reach;
  const double cx = way * rx * y / ry, cy = -way * ry * x / rx;
  const double first = std::atan2((y - cy) / ry, (x - cx) / rx);
  double turn = std::atan2((-y - cy) / ry, (-x - cx) / rx) - first;
  if (arc.sweep && turn < 0) turn += 2 * pi;
  if (!arc.sweep && turn > 0) turn -= 2 * pi;
  const Point centre{cosine * cx - sine * cy + (from.u + arc.to.u) / 2,
                     sine * cx + cosine * cy + (from.v + arc.to.v) / 2};
  return {centre, rx, ry, cosine, sine, first, turn};
}

class Pen {
 public:
  void operator()(const MoveTo& move) {
    lift();
    line_.push_back(move.to);
    down_ = true;
  }

  void operator()(const LineTo& line) { go(line.to); }

  void operator()(const CubicTo& curve) {
    const Point a = line_.back();
    for (int i = 1; i < bezier_steps; ++i) {
      const double t = static_cast<double>(i) / bezier_steps, s = 1 - t;
      const double wa = s * s * s, wb = 3 * s * s * t, wc = 3 * s * t * t, wd = t * t * t;
      go({wa * a.u + wb * curve.control1.u + wc * curve.control2.u + wd * curve.to.u,
          wa * a.v + wb * curve.control1.v + wc * curve.control2.v + wd * curve.to.v});
    }
    go(curve.to);
  }

  void operator()(const ArcTo& arc) {
    const Ellipse whole = ellipse(line_.back(), arc);
    // A hair under, so that a right angle takes 18 steps and not 19 by rounding.
    const int steps =
        std::max(1, static_cast<int>(std::ceil(std::abs(whole.turn_rad) / arc_step_rad - 1e-9)));
    for (int i = 1; i < steps; ++i) go(whole.at(whole.first_rad + whole.turn_rad * i / steps));
    go(arc.to);
  }

  void operator()(const Close&) {
    if (!down_) return;  // Z after Z
    const Point start = line_.front();
    while (line_.size() > 1 && same(line_.back(), start)) line_.pop_back();
    outline_.rings.push_back(std::move(line_));
    line_ = {start};
    down_ = false;
  }

  Outline finish() {
    lift();
    return std::move(outline_);
  }

 private:
  void go(Point to) {
    down_ = true;
    if (!same(line_.back(), to)) line_.push_back(to);
  }

  void lift() {
    if (down_) outline_.open.push_back(std::move(line_));
    line_.clear();
    down_ = false;
  }

  Outline outline_;
  std::vector<Point> line_;
  bool down_ = false;  // whether the line at hand was asked for: not the point that Z goes back to
};

}  // namespace

Outline flatten(const Path& path) {
  Pen pen;
  for (const Segment& segment : path) std::visit(pen, segment);
  return pen.finish();
}

}  // namespace tinworm::geometry
