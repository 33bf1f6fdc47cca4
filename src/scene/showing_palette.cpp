#include "scene/showing_palette.hpp"

#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

struct Tones {
  Colour strong, pale, marking;
};

Colour plum(double lightness, double chroma) {
  return from_oklch(lightness, chroma, 336);
}

Tones tones(Showing showing) {
  const Colour cool_white = from_oklch(0.93, 0.006, 250);
  switch (showing) {
    case Showing::thicker:
      return {from_oklch(0.80, 0.075, 82), from_oklch(0.875, 0.045, 82),
              from_oklch(0.56, 0.060, 78)};
    case Showing::nothing:
      return {plum(0.965, 0.006), plum(0.980, 0.004), plum(0.62, 0.010)};
    case Showing::lost_little:
      return {plum(0.82, 0.075), plum(0.888, 0.045), plum(0.60, 0.120)};
    case Showing::by_sign:
    case Showing::lost_some:
      return {plum(0.665, 0.125), plum(0.795, 0.070), plum(0.50, 0.125)};
    case Showing::lost_much:
      return {plum(0.49, 0.135), plum(0.700, 0.085), plum(0.40, 0.110)};
    case Showing::gone:
      return {plum(0.30, 0.085), plum(0.605, 0.090), plum(0.28, 0.080)};
    case Showing::repaired:
      return {paper, paper, repair_ink};
    case Showing::newly_seen:
      return {paper, paper, soft_ink};
    case Showing::not_comparable:
      return {cool_white, cool_white, faint_ink};
    case Showing::no_longer_visible:
    case Showing::not_seen:
      return {not_seen_grey, not_seen_grey, not_seen_mark};
    case Showing::not_fitted:
      break;
  }
  return {paper, paper, faint_ink};
}

Item fill(const std::vector<Polyline>& shape, Colour ground, Texture texture, Colour mark) {
  Clipped filled{shape, {Shape{{polyline(bounds(shape).grown(0.5))}, ground, {}}}};
  for (Shape& each : strokes(texture, shape, mark)) filled.within.push_back(std::move(each));
  return filled;
}

}  // namespace

Colour strong(Showing showing) {
  return tones(showing).strong;
}
Colour pale(Showing showing) {
  return tones(showing).pale;
}
Colour marking(Showing showing) {
  return tones(showing).marking;
}

Texture texture_of(Showing showing) {
  switch (showing) {
    case Showing::thicker:
      return Texture::pluses;
    case Showing::lost_little:
      return Texture::ticks;
    case Showing::by_sign:
      return Texture::chevrons;
    case Showing::lost_some:
      return Texture::uprights;
    case Showing::lost_much:
      return Texture::grid;
    case Showing::gone:
      return Texture::checks;
    case Showing::repaired:
      return Texture::running_stitch;
    case Showing::newly_seen:
      return Texture::lozenges;
    case Showing::no_longer_visible:
      return Texture::wide_lattice;
    case Showing::not_comparable:
      return Texture::broken_diagonals;
    case Showing::not_seen:
      return Texture::wide_diagonals;
    case Showing::nothing:
    case Showing::not_fitted:
      break;
  }
  return Texture::none;
}

Item pale_fill(Showing showing, const std::vector<Polyline>& shape) {
  return fill(shape, pale(showing), texture_of(showing), marking(showing));
}

Item strong_fill(Showing showing, const std::vector<Polyline>& shape) {
  return fill(shape, strong(showing), texture_of(showing), ink_on(strong(showing)));
}

}  // namespace tinworm::scene
