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

// In sRGB, as the arithmetic of OKLab is no constant expression; beside each its lightness, chroma
// and hue, to which the tests hold it.
inline constexpr Colour paper = white;
// Outlines and words: 0.20, 0.005, 60.
inline constexpr Colour ink{0.09325898, 0.08437474, 0.07756629};
// Shut lines, captions, leaders; reads on paper: 0.42, 0.005, 60.
inline constexpr Colour soft_ink{0.31041937, 0.29967949, 0.29150145};
// Glass, wheels, ghosts: 0.62, 0.005, 60.
inline constexpr Colour faint_ink{0.53505347, 0.52319935, 0.51418969};
// Cool mid-grey: 0.78, 0.012, 250.
inline constexpr Colour not_seen_grey{0.69714997, 0.72197617, 0.74872068};
// The ground of a zone that was not seen: 0.92, 0.008, 250.
inline constexpr Colour not_seen_ground{0.88092322, 0.89815148, 0.91675196};
// Lines on a zone seen under a coating: 0.80, 0.004, 60.
inline constexpr Colour coated_mark{0.75144277, 0.74132425, 0.73364517};
// Diagonals of what was not seen: 0.58, 0.014, 250.
inline constexpr Colour not_seen_mark{0.45589370, 0.48283511, 0.51177630};
// Blue-black: 0.30, 0.055, 262.
inline constexpr Colour repair_ink{0.11879071, 0.17802005, 0.28771233};
// Behind charts: 0.86, 0.003, 60 and 0.90, 0.004, 60.
inline constexpr Colour grid_grey{0.82502550, 0.81729382, 0.81143046};
inline constexpr Colour band_grey{0.87830382, 0.86788078, 0.85997274};

}  // namespace tinworm::scene
