// The texture of each step, so that the drawing reads without colour. Strokes clipped to a shape,
// on one lattice for the whole page; at least one row in any band 2.5 mm wide.
#pragma once

#include <vector>

#include "scene/page.hpp"
#include "weighing/result.hpp"

namespace tinworm::scene {

// none, sparse dots, denser dots, hatch, cross hatch, rings (solid with a white core); bold wide
// diagonals, leaning the other way, for what was not seen; thin level lines for what was seen under
// a coating.
// Those of the second row are of maps that compare surveys.
enum class Texture {
  none,
  sparse_dots,
  dense_dots,
  hatch,
  cross_hatch,
  rings,
  wide_diagonals,
  level_lines,
  ticks,
  uprights,
  grid,
  checks,
  chevrons,
  pluses,
  running_stitch,
  lozenges,
  wide_lattice,
  broken_diagonals
};

struct Weave {           // what a texture is made of
  double pitch_mm = 0;   // between rows
  double stroke_mm = 0;  // width of a line, diameter of a dot
};

Texture texture_of(weighing::Step step);
Weave weave_of(Texture texture);  // pitch 0.9 mm or more, stroke 0.18 mm or more

// The strokes that show in `shape`, to be clipped to it by whoever uses them.
std::vector<Shape> strokes(Texture texture, const std::vector<Polyline>& shape, Colour colour);

// A shape filled with a zone's pale tint and texture, or with a spot's strong colour and texture.
Item pale_fill(weighing::Step step, const std::vector<Polyline>& shape);
Item strong_fill(weighing::Step step, const std::vector<Polyline>& shape);

}  // namespace tinworm::scene
