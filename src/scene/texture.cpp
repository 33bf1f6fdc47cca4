#include "scene/texture.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

double points(double mm) {
  return mm / mm_per_pt;
}

// Parallel lines at 45 degrees that fall to the right or to the left, spaced from the page's
// corner.
Shape diagonals(const Area& area, bool falling, Weave weave, Colour colour) {
  const double step = weave.pitch_mm * std::numbers::sqrt2;  // along x
  const double lean = falling ? 1 : -1;
  Shape shape{{}, {}, Stroke{colour, points(weave.stroke_mm), {}}};
  // Each line is x - lean * y = c.
  const double at_top = -lean * area.y_mm, at_bottom = -lean * area.bottom();
  const double least = area.x_mm + std::min(at_top, at_bottom);
  const double most = area.right() + std::max(at_top, at_bottom);
  for (double k = std::ceil(least / step); k * step <= most; ++k) {
    const double c = k * step;
    shape.lines.push_back(
        segment({c + lean * area.y_mm, area.y_mm}, {c + lean * area.bottom(), area.bottom()}));
  }
  return shape;
}

// Lattice points in staggered rows, on the page's own grid, in the shape or near enough to show.
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

Shape dots(const std::vector<Polyline>& area, Weave weave, Colour colour) {
  // A stroke of almost no length with round caps is a dot.
  Shape shape{{}, {}, Stroke{colour, points(weave.stroke_mm), {}}};
  for (const At at : lattice(area, weave.pitch_mm, weave.stroke_mm / 2)) {
    shape.lines.push_back(segment(at, {at.x_mm + 0.01, at.y_mm}));
  }
  return shape;
}

Shape rings(const std::vector<Polyline>& area, Weave weave, Colour colour) {
  constexpr double radius_mm = 0.42;
  Shape shape{{}, paper, Stroke{colour, points(weave.stroke_mm), {}}};
  for (const At at : lattice(area, weave.pitch_mm, radius_mm)) {
    shape.lines.push_back(circle(at, radius_mm, 14));
  }
  return shape;
}

// The white core of a hole: the shape drawn in to its middle.
Shape core(const std::vector<Polyline>& shape) {
  constexpr double share = 0.42;
  const At middle = bounds(shape).middle();
  Shape small{shape, paper, {}};
  for (Polyline& line : small.lines) {
    for (At& at : line.points) {
      at = {std::lerp(middle.x_mm, at.x_mm, share), std::lerp(middle.y_mm, at.y_mm, share)};
    }
  }
  return small;
}

}  // namespace

Texture texture_of(Step step) {
  switch (step) {
    case Step::not_seen:
      return Texture::wide_diagonals;
    case Step::sound:
      return Texture::none;
    case Step::film:
      return Texture::sparse_dots;
    case Step::pitted:
      return Texture::dense_dots;
    case Step::thin:
      return Texture::hatch;
    case Step::weak:
      return Texture::cross_hatch;
    case Step::holed:
      return Texture::rings;
  }
  return Texture::none;
}

Weave weave_of(Texture texture) {
  switch (texture) {
    case Texture::none:
      return {};
    case Texture::sparse_dots:
      return {1.8, 0.36};
    case Texture::dense_dots:
      return {1.0, 0.36};
    case Texture::hatch:
    case Texture::cross_hatch:
      return {1.1, 0.18};
    case Texture::rings:
      return {1.5, 0.22};
    case Texture::wide_diagonals:
      return {2.2, 0.62};
  }
  return {};
}

std::vector<Shape> strokes(Texture texture, const std::vector<Polyline>& shape, Colour colour) {
  const Area area = bounds(shape);
  const Weave weave = weave_of(texture);
  switch (texture) {
    case Texture::none:
      return {};
    case Texture::sparse_dots:
    case Texture::dense_dots:
      return {dots(shape, weave, colour)};
    case Texture::hatch:
      return {diagonals(area, false, weave, colour)};
    case Texture::cross_hatch:
      return {diagonals(area, false, weave, colour), diagonals(area, true, weave, colour)};
    case Texture::rings:
      return {rings(shape, weave, colour)};
    case Texture::wide_diagonals:
      return {diagonals(area, true, weave, colour)};
  }
  return {};
}

Item pale_fill(Step step, const std::vector<Polyline>& shape) {
  const Colour mark = step == Step::not_seen ? not_seen_mark : marking(step);
  Clipped tint{shape, {Shape{{polyline(bounds(shape).grown(0.5))}, pale(step), {}}}};
  for (Shape& each : strokes(texture_of(step), shape, mark)) {
    tint.within.push_back(std::move(each));
  }
  return tint;
}

Item strong_fill(Step step, const std::vector<Polyline>& shape) {
  Clipped fill{shape, {Shape{shape, strong(step), {}}}};
  if (step == Step::holed) {
    fill.within.push_back(core(shape));
    return fill;
  }
  for (Shape& each : strokes(texture_of(step), shape, ink_on(strong(step)))) {
    fill.within.push_back(std::move(each));
  }
  return fill;
}

}  // namespace tinworm::scene
