// What textures are made of: small figures stamped on a lattice, and rulings. Both on one lattice
// for the whole page, so that textures run on from shape to shape.
#pragma once

#include <vector>

#include "scene/page.hpp"

namespace tinworm::scene {

// Lattice points in staggered rows, in the shape or near enough that something which reaches so far
// from them shows in it.
std::vector<At> lattice(const std::vector<Polyline>& shape, double pitch_mm, double reach_mm);

// The figure, drawn round (0, 0), at every point of the lattice.
std::vector<Polyline> stamped(const std::vector<Polyline>& figure, const std::vector<At>& points);

// Parallel lines across the area: at 45 degrees that fall to the right or to the left, or upright,
// or level.
enum class Ruling { falling, rising, upright, level };
std::vector<Polyline> ruled(const Area& area, Ruling ruling, double pitch_mm);

}  // namespace tinworm::scene
