// A photo on a Cairo surface.
#pragma once

#include "painting/held.hpp"
#include "scene/page.hpp"

namespace tinworm::painting {

// PDF and SVG get the photo's bytes as they are, and the same bytes once a file however often they
// are drawn; a PNG gets its pixels. Throws std::invalid_argument for what isn't a whole JPEG of the
// size told, or has no area.
void draw(cairo_t* cairo, const scene::Photo& photo);

}  // namespace tinworm::painting
