// Zone numbers: two digits at the visually central point of each zone in each view, on a small
// plate of the paper's colour; where a zone has no room for it, beside the drawing with a leader.
// No two lie on each other.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

constexpr double number_pt = 6.5;

// Numbers that find room inside their zones; returns the zones that are left.
std::vector<const DrawnZone*> label_inside(Drafting& drafting);

// The others, in free space near by, each with a thin leader to its zone. Where no seat is free of
// words, or its leader would cross another, nothing is drawn: the key says whose number is missing
// (Used::unnumbered).
void label_outside(Drafting& drafting, const std::vector<const DrawnZone*>& zones);

// Rings with the ranks of the spots that have no callout, up to the `last` of the car.
void ring_ranks(Drafting& drafting, const std::vector<const weighing::Spot*>& called, int last = 9);

}  // namespace tinworm::scene
