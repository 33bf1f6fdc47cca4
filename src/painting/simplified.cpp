#include "painting/simplified.hpp"

#include <algorithm>
#include <cmath>

namespace tinworm::painting {
namespace {

using scene::At;

double distance_mm(At at, At from, At to) {
  const double dx = to.x_mm - from.x_mm, dy = to.y_mm - from.y_mm;
  const double length2 = dx * dx + dy * dy;
  const double along =
      length2 > 0 ? ((at.x_mm - from.x_mm) * dx + (at.y_mm - from.y_mm) * dy) / length2 : 0;
  const double t = std::clamp(along, 0.0, 1.0);
  return std::hypot(at.x_mm - from.x_mm - t * dx, at.y_mm - from.y_mm - t * dy);
}

// Marks what must stay between two points that stay.
void keep(const std::vector<At>& points, std::size_t first, std::size_t last, double within_mm,
          std::vector<bool>& kept) {
  std::vector<std::pair<std::size_t, std::size_t>> open{{first, last}};
  while (!open.empty()) {
    const auto [from, to] = open.back();
    open.pop_back();
    double most = within_mm;
    std::size_t farthest = from;
    for (std::size_t i = from + 1; i < to; ++i) {
      const double far = distance_mm(points[i], points[from], points[to]);
      if (far <= most) continue;
      most = far;
      farthest = i;
    }
    if (farthest == from) continue;
    kept[farthest] = true;
    open.emplace_back(from, farthest);
    open.emplace_back(farthest, to);
  }
}

}  // namespace

scene::Polyline simplified(const scene::Polyline& line, double within_mm) {
  if (line.points.size() < 3) return line;
  std::vector<At> points = line.points;
  if (line.closed) points.push_back(points.front());
  const std::size_t last = points.size() - 1;
  // A ring is halved at the point that lies farthest from its first.
  std::size_t middle = 0;
  double most = 0;
  for (std::size_t i = 1; line.closed && i < last; ++i) {
    const double far = std::hypot(points[i].x_mm - points[0].x_mm, points[i].y_mm - points[0].y_mm);
    if (far <= most) continue;
    most = far;
    middle = i;
  }
  std::vector<bool> kept(points.size(), false);
  kept[0] = kept[last] = true;
  if (middle > 0) {
    kept[middle] = true;
    keep(points, 0, middle, within_mm, kept);
  }
  keep(points, middle, last, within_mm, kept);
  scene::Polyline result{{}, line.closed};
  for (std::size_t i = 0; i <= last - (line.closed ? 1 : 0); ++i)
    if (kept[i]) result.points.push_back(points[i]);
  return result;
}

}  // namespace tinworm::painting
