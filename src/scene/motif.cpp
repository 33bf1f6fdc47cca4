#include "scene/motif.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

namespace tinworm::scene {
namespace {

// Each line is x - lean * y = c, spaced from the page's corner.
std::vector<Polyline> diagonals(const Area& area, double lean, double pitch_mm) {
  const double step = pitch_mm * std::numbers::sqrt2;  // along x
  const double at_top = -lean * area.y_mm, at_bottom = -lean * area.bottom();
  const double least = area.x_mm + std::min(at_top, at_bottom);
  const double most = area.right() + std::max(at_top, at_bottom);
  std::vector<Polyline> lines;
  for (double k = std::ceil(least / step); k * step <= most; ++k) {
    const double c = k * step;
    lines.push_back(
        segment({c + lean * area.y_mm, area.y_mm}, {c + lean * area.bottom(), area.bottom()}));
  }
  return lines;
}

}  // namespace

std::vector<At> lattice(const std::vector<Polyline>& shape, double pitch_mm, double reach_mm) {
  std::vector<At> found;
  const Area area = bounds(shape);
  for (double row = std::floor(area.y_mm / pitch_mm); row * pitch_mm <= area.bottom() + pitch_mm;
       ++row) {
    const double y = row * pitch_mm;
    const double shift = std::fmod(std::abs(row), 2) == 1 ? pitch_mm / 2 : 0;
    std::set<double> columns;
    for (const double level : {y, y - reach_mm, y + reach_mm}) {
      for (const auto& [left, right] : stretches(shape, level)) {
        for (double k = std::ceil((left - reach_mm - shift) / pitch_mm);
             k * pitch_mm + shift <= right + reach_mm; ++k) {
          columns.insert(k * pitch_mm + shift);
        }
      }
    }
    for (const double x : columns) found.push_back({x, y});
  }
  return found;
}

std::vector<Polyline> stamped(const std::vector<Polyline>& figure, const std::vector<At>& points) {
  std::vector<Polyline> lines;
  for (const At at : points) {
    for (Polyline line : figure) {
      for (At& each : line.points) each = {at.x_mm + each.x_mm, at.y_mm + each.y_mm};
      lines.push_back(std::move(line));
    }
  }
  return lines;
}

std::vector<Polyline> ruled(const Area& area, Ruling ruling, double pitch_mm) {
  if (ruling == Ruling::falling) return diagonals(area, 1, pitch_mm);
  if (ruling == Ruling::rising) return diagonals(area, -1, pitch_mm);
  const bool upright = ruling == Ruling::upright;
  const double from = upright ? area.x_mm : area.y_mm, to = upright ? area.right() : area.bottom();
  std::vector<Polyline> lines;
  for (double k = std::ceil(from / pitch_mm); k * pitch_mm <= to; ++k) {
    const double at = k * pitch_mm;
    lines.push_back(upright ? segment({at, area.y_mm}, {at, area.bottom()})
                            : segment({area.x_mm, at}, {area.right(), at}));
  }
  return lines;
}

}  // namespace tinworm::scene
