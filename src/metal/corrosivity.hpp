// How fast bare carbon steel goes in open air: ISO 9223:2012 corrosivity categories and ISO
// 9224:2012 guiding values. Open, rinsed surfaces; seams, mud and pits go several times deeper
// (common practice).
#pragma once

#include <optional>
#include <string_view>

namespace tinworm::metal {

enum class Corrosivity { c1, c2, c3, c4, c5, cx };  // worse is greater
std::string_view word(Corrosivity category);        // "C1" ... "C5", "CX"

// Category by the loss of the first year. The standard rounds its two units apart, so that 81 µm/a
// is C5 by thickness and C4 by mass: classify in the unit that was measured. On a limit: the
// milder. None over the top of CX, or under 0.
std::optional<Corrosivity> category_by_thickness(double um_per_year);
std::optional<Corrosivity> category_by_mass(double g_per_m2_year);

struct FirstYear {
  double low = 0;   // exclusive; 0 for C1
  double high = 0;  // inclusive
};
FirstYear first_year_um(Corrosivity category);
FirstYear first_year_g_per_m2(Corrosivity category);

// Exponents b of ISO 9224:2012 (quoted).
inline constexpr double steel_b1 = 0.523;  // mean
inline constexpr double steel_b2 = 0.575;  // upper
inline constexpr double zinc_b1 = 0.813;
inline constexpr double zinc_b2 = 0.873;

// Loss after t years by the power law, first_year t^b, in the unit of the first year's loss; for
// all t, as the standard's own table has it.
double power_law_loss(double first_year, double years, double b);

// The other option of the standard: after 20 years on along the tangent,
// first_year [20^b + b 20^(b-1) (t - 20)], which gives more.
double tangent_loss(double first_year, double years, double b);

}  // namespace tinworm::metal
