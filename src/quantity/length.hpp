// Lengths, sizes, film thicknesses, areas, distances driven and shares, from text with a unit.
//
// Units: mm, um (or µm), cm, m, in (or " and ″), thou, ft; mi and km for odometers; m2, cm2, ft2
// for areas; %; capitals as you like. Numbers are plain decimals, a leading or trailing point
// allowed
// (`.81`, `5.`): no sign, no exponent, no digit separators, no comma, no hexadecimal, no infinity.
// Inches may be fractions: `3/64 in`, `4 1/2"`. Everything comes back in the unit its name says.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "quantity/refusal.hpp"

namespace tinworm::quantity {

enum class Units { mm, inch };  // what a length without a unit is taken as

struct Size {  // first figure along the zone's `runs`, second across it
  double along_mm = 0;
  double across_mm = 0;
  bool across_known = true;  // false: one figure was written, and across_mm is assumed_across_mm
  auto operator<=>(const Size&) const = default;
};
// Common practice: a rusted edge or seam of which only the length was noted is about this wide.
constexpr double assumed_across_mm = 25;

struct Films {
  std::vector<double> um;
  std::optional<double> over_um;  // also in `um`; a reading off the gauge's scale: a lower bound
  bool operator==(const Films&) const = default;
};

tl::expected<double, Refusal> parse_number(std::string_view text);
tl::expected<int, Refusal> parse_whole_number(std::string_view text);  // 0 to 999,999,999
tl::expected<double, Refusal> parse_length_mm(std::string_view text, Units units);
// A place along an axis: a length that may have a sign, `-720`, `-28.5 in`.
tl::expected<double, Refusal> parse_coordinate_mm(std::string_view text, Units units);
// Coating thickness: a bare number is µm whatever the survey's units.
tl::expected<double, Refusal> parse_film_um(std::string_view text);
// `.81 .78 .84 mm`: numbers between spaces, one unit for all at the end or none.
tl::expected<std::vector<double>, Refusal> parse_lengths_mm(std::string_view text, Units units);
// `140 155 900`; `900-1600` is two readings; `over 2000`, `>2000` and `2000+` are off the scale.
tl::expected<Films, Refusal> parse_films_um(std::string_view text);
// `300x120 mm`, `3" x 1"`; one figure is a length whose width isn't known.
tl::expected<Size, Refusal> parse_size(std::string_view text, Units units);
// The same, but one figure is as wide as long: a hole of 20 is round.
tl::expected<Size, Refusal> parse_hole(std::string_view text, Units units);
tl::expected<double, Refusal> parse_area_m2(std::string_view text);      // unit required
tl::expected<double, Refusal> parse_distance_km(std::string_view text);  // unit required
tl::expected<double, Refusal> parse_share(std::string_view text);  // `60 %` is 0.60; % required

}  // namespace tinworm::quantity
