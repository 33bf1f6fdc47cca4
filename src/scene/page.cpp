#include "scene/page.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace tinworm::scene {

Layer& Page::layer(std::string_view name) {
  for (Layer& each : layers) {
    if (each.name == name) return each;
  }
  return layers.emplace_back(Layer{std::string(name), {}});
}

Polyline polyline(const Area& area) {
  return {{{area.x_mm, area.y_mm},
           {area.right(), area.y_mm},
           {area.right(), area.bottom()},
           {area.x_mm, area.bottom()}},
          true};
}

Polyline circle(At centre, double radius_mm, int corners) {
  Polyline line{{}, true};
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * std::numbers::pi * i / corners;
    line.points.push_back(
        {centre.x_mm + radius_mm * std::cos(angle), centre.y_mm + radius_mm * std::sin(angle)});
  }
  return line;
}

Polyline segment(At from, At to) {
  return {{from, to}, false};
}

bool inside(const std::vector<Polyline>& shape, At at) {
  bool in = false;
  for (const Polyline& line : shape) {
    if (!line.closed) continue;
    const auto& points = line.points;
    for (std::size_t i = 0, j = points.size() - 1; i < points.size(); j = i++) {
      const At a = points[i], b = points[j];
      if ((a.y_mm > at.y_mm) == (b.y_mm > at.y_mm)) continue;
      if (at.x_mm < (b.x_mm - a.x_mm) * (at.y_mm - a.y_mm) / (b.y_mm - a.y_mm) + a.x_mm) in = !in;
    }
  }
  return in;
}

std::vector<std::pair<double, double>> stretches(const std::vector<Polyline>& shape, double y_mm) {
  std::vector<double> meets;
  for (const Polyline& line : shape) {
    if (!line.closed) continue;
    const auto& points = line.points;
    for (std::size_t i = 0, j = points.size() - 1; i < points.size(); j = i++) {
      const At a = points[i], b = points[j];
      if ((a.y_mm > y_mm) == (b.y_mm > y_mm)) continue;
      meets.push_back((b.x_mm - a.x_mm) * (y_mm - a.y_mm) / (b.y_mm - a.y_mm) + a.x_mm);
    }
  }
  std::sort(meets.begin(), meets.end());
  std::vector<std::pair<double, double>> found;
  for (std::size_t i = 0; i + 1 < meets.size(); i += 2) found.emplace_back(meets[i], meets[i + 1]);
  return found;
}

Area bounds(const std::vector<Polyline>& shape) {
  constexpr double far = std::numeric_limits<double>::max();
  At least{far, far}, most{-far, -far};
  for (const Polyline& line : shape) {
    for (const At at : line.points) {
      least = {std::min(least.x_mm, at.x_mm), std::min(least.y_mm, at.y_mm)};
      most = {std::max(most.x_mm, at.x_mm), std::max(most.y_mm, at.y_mm)};
    }
  }
  return {least.x_mm, least.y_mm, most.x_mm - least.x_mm, most.y_mm - least.y_mm};
}

std::vector<const Text*> texts(const Page& page) {
  std::vector<const Text*> found;
  for (const Layer& layer : page.layers) {
    for (const Item& item : layer.items) {
      if (const auto* text = std::get_if<Text>(&item)) found.push_back(text);
    }
  }
  return found;
}

}  // namespace tinworm::scene
