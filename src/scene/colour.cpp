#include "scene/colour.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tinworm::scene {
namespace {

using Vector = std::array<double, 3>;
using Matrix = std::array<Vector, 3>;

double linear(double value) {
  return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double encoded(double value) {
  value = std::clamp(value, 0.0, 1.0);
  return value <= 0.0031308 ? 12.92 * value : 1.055 * std::pow(value, 1 / 2.4) - 0.055;
}

Vector times(const Matrix& matrix, const Vector& vector) {
  Vector product{};
  for (std::size_t row = 0; row < 3; ++row) {
    for (std::size_t column = 0; column < 3; ++column) {
      product[row] += matrix[row][column] * vector[column];
    }
  }
  return product;
}

Vector linear(Colour colour) {
  return {linear(colour.red), linear(colour.green), linear(colour.blue)};
}

Colour encoded(const Vector& rgb) {
  return {encoded(rgb[0]), encoded(rgb[1]), encoded(rgb[2])};
}

constexpr Matrix lms_from_rgb{{{0.4122214708, 0.5363325363, 0.0514459929},
                               {0.2119034982, 0.6806995451, 0.1073969566},
                               {0.0883024619, 0.2817188376, 0.6299787005}}};
constexpr Matrix lab_from_lms{{{0.2104542553, 0.7936177850, -0.0040720468},
                               {1.9779984951, -2.4285922050, 0.4505937099},
                               {0.0259040371, 0.7827717662, -0.8086757660}}};
// The way back, as published beside them.
constexpr Matrix lms_from_lab{{{1, 0.3963377774, 0.2158037573},
                               {1, -0.1055613458, -0.0638541728},
                               {1, -0.0894841775, -1.2914855480}}};
constexpr Matrix rgb_from_lms{{{4.0767416621, -3.3077115913, 0.2309699292},
                               {-1.2684380046, 2.6097574011, -0.3413193965},
                               {-0.0041960863, -0.7034186147, 1.7076147010}}};

constexpr Matrix protan{{{0.152286, 1.052583, -0.204868},
                         {0.114503, 0.786281, 0.099216},
                         {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix deutan{{{0.367322, 0.860646, -0.227968},
                         {0.280085, 0.672501, 0.047413},
                         {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix tritan{{{1.255528, -0.076749, -0.178779},
                         {-0.078411, 0.930809, 0.147602},
                         {0.004733, 0.691367, 0.303900}}};

}  // namespace

Lab to_oklab(Colour colour) {
  Vector lms = times(lms_from_rgb, linear(colour));
  for (double& each : lms) each = std::cbrt(each);
  const Vector lab = times(lab_from_lms, lms);
  return {lab[0], lab[1], lab[2]};
}

Colour from_oklab(Lab lab) {
  Vector lms = times(lms_from_lab, {lab.lightness, lab.a, lab.b});
  for (double& each : lms) each = each * each * each;
  return encoded(times(rgb_from_lms, lms));
}

Colour from_oklch(double lightness, double chroma, double hue_deg) {
  const double hue = hue_deg * std::numbers::pi / 180;
  return from_oklab({lightness, chroma * std::cos(hue), chroma * std::sin(hue)});
}

double oklab_distance(Colour one, Colour other) {
  const Lab p = to_oklab(one), q = to_oklab(other);
  return std::hypot(p.lightness - q.lightness, p.a - q.a, p.b - q.b);
}

Colour mixed(Colour one, Colour other, double share_of_other) {
  const Lab p = to_oklab(one), q = to_oklab(other);
  return from_oklab({std::lerp(p.lightness, q.lightness, share_of_other),
                     std::lerp(p.a, q.a, share_of_other), std::lerp(p.b, q.b, share_of_other)});
}

double relative_luminance(Colour colour) {
  const Vector rgb = linear(colour);
  return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
}

double contrast(Colour one, Colour other) {
  const double p = relative_luminance(one), q = relative_luminance(other);
  return (std::max(p, q) + 0.05) / (std::min(p, q) + 0.05);
}

Colour ink_on(Colour ground) {
  return contrast(black, ground) >= contrast(white, ground) ? black : white;
}

Colour grey_of(Colour colour) {
  const double value = encoded(relative_luminance(colour));
  return {value, value, value};
}

Colour seen_by(Vision vision, Colour colour) {
  const Matrix& matrix = vision == Vision::protan   ? protan
                         : vision == Vision::deutan ? deutan
                                                    : tritan;
  return encoded(times(matrix, linear(colour)));
}

}  // namespace tinworm::scene
