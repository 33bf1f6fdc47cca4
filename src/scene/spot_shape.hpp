// The shapes that places are drawn in.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

constexpr double least_spot_mm = 2;  // under this on paper no size can be read off

// A soft-cornered patch that fills nearly all of its rectangle.
Polyline patch(At middle, double width_mm, double height_mm);
// A triangle on its point: found here, not to scale.
Polyline symbol(At middle);
// A circle, to be left open.
Polyline open_mark(At middle);

geometry::Outline outline_of(const DrawnZone& drawn);

// A patch stops at its zone's bounds. One that would lose more than 40 % of its area slides into
// the zone by up to half its size; one for which that is too little, and a small one, is whole.
std::vector<Polyline> cut_to_zone(const Polyline& whole, const DrawnZone& drawn);

// The middle of the longest stretch inside the shape on the line x = `fixed` (or y = `fixed`).
double middle_inside(const std::vector<Polyline>& shape, double fixed, bool fixed_is_x,
                     double otherwise);

// A mark in the colour and texture of its step; its edge solid where the metal was measured, broken
// where it was judged.
std::vector<Item> inked(MarkKind kind, weighing::Step step, bool measured,
                        const std::vector<Polyline>& shape);

// The cross of a station with whole metal.
std::vector<Item> station_cross(At middle);

}  // namespace tinworm::scene
