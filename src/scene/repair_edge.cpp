#include "scene/repair_edge.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

struct Step {
  At at;
  double along_x, along_y;  // unit vector
  double gone_mm;           // from the start of the line
};

// Points at even distances along a closed line.
std::vector<Step> paced(const Polyline& line, double pace_mm) {
  std::vector<Step> steps;
  double gone = 0, next = 0;
  const std::size_t count = line.points.size();
  for (std::size_t i = 0; i < count; ++i) {
    const At a = line.points[i], b = line.points[(i + 1) % count];
    const double length = std::hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm);
    if (length <= 0) continue;
    const double dx = (b.x_mm - a.x_mm) / length, dy = (b.y_mm - a.y_mm) / length;
    for (; next <= gone + length; next += pace_mm) {
      const double t = next - gone;
      steps.push_back({{a.x_mm + t * dx, a.y_mm + t * dy}, dx, dy, next});
    }
    gone += length;
  }
  return steps;
}

// Short strokes across the edge. Clipped to the zone, only their inner half shows.
Shape stitches(const std::vector<Polyline>& shape) {
  constexpr double apart_mm = 1.5, half_mm = 1.1;
  Shape shown{{}, {}, Stroke{repair_ink, 0.75, {}}};
  for (const Polyline& line : shape) {
    for (const Step& step : paced(line, apart_mm)) {
      const double x = -step.along_y * half_mm, y = step.along_x * half_mm;
      shown.lines.push_back(
          segment({step.at.x_mm - x, step.at.y_mm - y}, {step.at.x_mm + x, step.at.y_mm + y}));
    }
  }
  return shown;
}

Shape wave(const std::vector<Polyline>& shape) {
  constexpr double length_mm = 2.4, height_mm = 0.45, in_mm = 0.75;
  Shape shown{{}, {}, Stroke{repair_ink, 0.75, {}}};
  for (const Polyline& line : shape) {
    Polyline wavy{{}, true};
    for (const Step& step : paced(line, 0.2)) {
      const double out = height_mm * std::sin(2 * std::numbers::pi * step.gone_mm / length_mm);
      // Which side is inside is found by trying, since rings run either way.
      const At left{step.at.x_mm - step.along_y * 0.1, step.at.y_mm + step.along_x * 0.1};
      const double inward = (inside(shape, left) ? 1 : -1) * (in_mm + out);
      wavy.points.push_back(
          {step.at.x_mm - step.along_y * inward, step.at.y_mm + step.along_x * inward});
    }
    if (wavy.points.size() > 2) shown.lines.push_back(std::move(wavy));
  }
  return shown;
}

}  // namespace

RepairEdge repair_edge_of(const weighing::Zone& zone) {
  RepairEdge edge = RepairEdge::none;
  for (const weighing::Repair& repair : zone.repairs) {
    const RepairEdge own = !repair.reliable   ? RepairEdge::dash_and_dot
                           : *repair.reliable ? RepairEdge::stitches
                                              : RepairEdge::wave;
    edge = std::max(edge, own);
  }
  return edge;
}

Item repair_edge(RepairEdge edge, const std::vector<Polyline>& shape) {
  std::vector<Polyline> closed;
  for (const Polyline& line : shape) {
    if (line.closed) closed.push_back(line);
  }
  switch (edge) {
    case RepairEdge::none:
      return Shape{};
    case RepairEdge::stitches:
      return Clipped{closed, {stitches(closed)}};
    case RepairEdge::dash_and_dot:
      return Clipped{closed, {Shape{closed, {}, Stroke{repair_ink, 2.4, {1.8, 0.7, 0.5, 0.7}}}}};
    case RepairEdge::wave:
      return Clipped{closed, {wave(closed)}};
  }
  return Shape{};
}

void draw_repair_edge(Drafting& drafting, const DrawnZone& drawn) {
  const RepairEdge edge = repair_edge_of(*drawn.zone);
  if (edge == RepairEdge::none) return;
  drafting.page.layer("repairs").items.push_back(repair_edge(edge, drawn.shape));
  drafting.used.repair_relied |= edge == RepairEdge::stitches;
  drafting.used.repair_not_known |= edge == RepairEdge::dash_and_dot;
  drafting.used.repair_not_relied |= edge == RepairEdge::wave;
}

}  // namespace tinworm::scene
