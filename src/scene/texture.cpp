#include "scene/texture.hpp"

#include <cmath>

#include "scene/motif.hpp"
#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

double points(double mm) {
  return mm / mm_per_pt;
}

Shape lines(std::vector<Polyline> all, Weave weave, Colour colour) {
  return {std::move(all), {}, Stroke{colour, points(weave.stroke_mm), {}}};
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

// The figure that a texture stamps, round (0, 0).
std::vector<Polyline> figure_of(Texture texture) {
  switch (texture) {
    case Texture::ticks:
      return {segment({0, -0.4}, {0, 0.4})};
    case Texture::checks:
      return {polyline(Area{-0.34, -0.34, 0.68, 0.68})};
    case Texture::chevrons:
      return {Polyline{{{-0.45, -0.25}, {0, 0.3}, {0.45, -0.25}}, false}};
    case Texture::pluses:
      return {segment({-0.45, 0}, {0.45, 0}), segment({0, -0.45}, {0, 0.45})};
    case Texture::running_stitch:
      return {segment({-0.5, 0}, {0.5, 0})};
    case Texture::lozenges:
      return {Polyline{{{0, -0.5}, {0.4, 0}, {0, 0.5}, {-0.4, 0}}, true}};
    case Texture::broken_diagonals:
      return {segment({-0.45, 0.45}, {0.45, -0.45})};
    default:
      return {};
  }
}

Shape stamps(Texture texture, const std::vector<Polyline>& area, Weave weave, Colour colour) {
  constexpr double reach_mm = 0.5;
  Shape shape =
      lines(stamped(figure_of(texture), lattice(area, weave.pitch_mm, reach_mm)), weave, colour);
  if (texture == Texture::checks) shape.fill = colour;
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
    case Step::bloom:
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
    case Texture::level_lines:
      return {1.6, 0.18};
    case Texture::ticks:
    case Texture::running_stitch:
      return {1.6, 0.24};
    case Texture::uprights:
    case Texture::grid:
      return {1.2, 0.2};
    case Texture::checks:
      return {1.3, 0.18};
    case Texture::chevrons:
    case Texture::pluses:
    case Texture::lozenges:
      return {1.8, 0.24};
    case Texture::wide_lattice:
      return {2.3, 0.5};
    case Texture::broken_diagonals:
      return {1.9, 0.22};
  }
  return {};
}

std::vector<Shape> strokes(Texture texture, const std::vector<Polyline>& shape, Colour colour) {
  const Area area = bounds(shape);
  const Weave weave = weave_of(texture);
  const auto rows = [&](Ruling ruling) {
    return lines(ruled(area, ruling, weave.pitch_mm), weave, colour);
  };
  switch (texture) {
    case Texture::none:
      return {};
    case Texture::sparse_dots:
    case Texture::dense_dots:
      return {dots(shape, weave, colour)};
    case Texture::hatch:
      return {rows(Ruling::rising)};
    case Texture::cross_hatch:
      return {rows(Ruling::rising), rows(Ruling::falling)};
    case Texture::rings:
      return {rings(shape, weave, colour)};
    case Texture::wide_diagonals:
      return {rows(Ruling::falling)};
    case Texture::level_lines:
      return {rows(Ruling::level)};
    case Texture::uprights:
      return {rows(Ruling::upright)};
    case Texture::grid:
      return {rows(Ruling::upright), rows(Ruling::level)};
    case Texture::wide_lattice:
      return {rows(Ruling::falling), rows(Ruling::rising)};
    default:
      return {stamps(texture, shape, weave, colour)};
  }
}

Item pale_fill(Step step, const std::vector<Polyline>& shape) {
  const Colour mark = marking(step);
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
