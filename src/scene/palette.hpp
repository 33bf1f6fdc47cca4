// The colours of the drawing. One ramp from white (sound) through straw, ochre and rust to
// near-black oxide (holed), laid out in OKLab so that lightness falls by even steps. Cool mid-grey
// is for what was not seen, blue-black for repairs. Nothing is green or blue: no colour here may be
// taken for "all is well".
#pragma once

#include "scene/colour.hpp"
#include "weighing/result.hpp"

namespace tinworm::scene {

Colour strong(weighing::Step step);   // of a spot
Colour pale(weighing::Step step);     // of a whole zone
Colour marking(weighing::Step step);  // of the texture on a pale zone: the same hue, darker
                                      // than the tint by a contrast of 1.7 or more

inline constexpr Colour paper = white;
extern const Colour ink;            // outlines and words
extern const Colour soft_ink;       // shut lines, captions, leaders; reads on paper
extern const Colour faint_ink;      // glass, wheels, ghosts
extern const Colour not_seen_grey;  // cool mid-grey
extern const Colour not_seen_mark;  // its diagonals
extern const Colour repair_ink;     // blue-black

}  // namespace tinworm::scene
