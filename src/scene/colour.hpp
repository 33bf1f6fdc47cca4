// Colours: sRGB values, OKLab, contrast and what people with a colour deficiency see.
//
// Sources: sRGB transfer IEC 61966-2-1. OKLab: published by B. Ottosson, 2020, and in CSS Color
// Module Level 4. Contrast and relative luminance: WCAG 2.2. Colour deficiency: Machado, Oliveira,
// Fernandes, "A physiologically-based model for simulation of color vision deficiency", 2009,
// severity 1.0, on linear RGB.
#pragma once

#include <array>
#include <compare>

namespace tinworm::scene {

struct Colour {  // sRGB, each 0 to 1
  double red = 0, green = 0, blue = 0;
  auto operator<=>(const Colour&) const = default;
};

inline constexpr Colour black{0, 0, 0};
inline constexpr Colour white{1, 1, 1};

struct Lab {  // OKLab: lightness 0 to 1, a to red, b to yellow
  double lightness = 0, a = 0, b = 0;
};

Lab to_oklab(Colour colour);
Colour from_oklab(Lab lab);  // cut to what sRGB holds, channel by channel
Colour from_oklch(double lightness, double chroma, double hue_deg);
double oklab_distance(Colour one, Colour other);
Colour mixed(Colour one, Colour other, double share_of_other);  // straight line in OKLab

double relative_luminance(Colour colour);   // 0 black to 1 white
double contrast(Colour one, Colour other);  // 1 to 21
Colour ink_on(Colour ground);               // black or white, whichever reads better
Colour grey_of(Colour colour);              // of the same relative luminance

enum class Vision { protan, deutan, tritan };
Colour seen_by(Vision vision, Colour colour);

}  // namespace tinworm::scene
