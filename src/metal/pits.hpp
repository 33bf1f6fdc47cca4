// Pits: the deepest to be expected over an area from the deepest of several equal patches of it,
// and what a pit leaves. Depths mm from the surrounding rusted face.
//
// Sources: the deepest over an area, with the best linear unbiased estimate, Shibata 1994, J. Res.
// NIST 99(4) 327; how much must be read, JCORR 43(5) 258 (abstract).
#pragma once

#include <optional>
#include <span>

namespace tinworm::metal {

// Gumbel distribution F(x) = exp(-exp(-(x - location)/scale)).
struct Gumbel {
  double location_mm = 0;
  double scale_mm = 0;  // over 0
};

// Best linear unbiased estimate from the greatest of each of 5 to 20 equal patches, in any order.
// None of fewer or more, nor where all are the same: there is no scatter to fit.
std::optional<Gumbel> fit_gumbel(std::span<const double> maxima_mm);

// Whether the deepest pit was estimated beyond the patches read, or why it was not.
enum class Extrapolation {
  made,
  all_read,      // the patches are as large as the area: nothing is left to estimate
  few_patches,   // under 5
  many_patches,  // over 20
  no_scatter,    // all maxima are the same
  small_share,   // under 3 % of the area read
  large_area,    // over 500 patches
};

// All three are the deepest seen where nothing was estimated; seen <= likely <= bound.
struct DeepestPit {
  double seen_mm = 0;
  double likely_mm = 0;  // as often deeper as not
  double bound_mm = 0;   // deeper in 2.5 % of cases
  Extrapolation extrapolation = Extrapolation::made;
};

// The deepest pit of the whole affected area, T = area / patch, from the maxima of n patches, at
// least one. Of the T - n patches not read (a part of one counts as one) the likely deepest is
// location + scale (ln(T - n) + 0.3665), the median of that deepest at the estimate; its bound is
// so many scales above as gumbel_table has, linearly between over ln(T - n).
DeepestPit deepest_over(std::span<const double> maxima_mm, double area_mm2, double patch_mm2);

// What a pit leaves, as a fraction of the sheet: (metal - pit)/t0. Without readings at the spot,
// metal_mm is t0. Under 0 where the pit is deeper than the metal.
double pit_left(double metal_mm, double pit_mm, double sheet_mm);

}  // namespace tinworm::metal
