// Pits: the deepest to be expected over an area from the deepest of several patches, and what a pit
// leaves. Depths mm from the surrounding rusted face.
//
// Sources: return period over area, Shibata 1994, J. Res. NIST 99(4) 327; the estimator, Coles, An
// Introduction to Statistical Modeling of Extreme Values, 2001, chapter 3; pitting factor, ASTM
// G46.
#pragma once

#include <optional>
#include <span>

namespace tinworm::metal {

// Gumbel distribution F(x) = exp(-exp(-(x - location)/scale)).
struct Gumbel {
  double location_mm = 0;
  double scale_mm = 0;  // over 0
};

double log_likelihood(const Gumbel& gumbel, std::span<const double> maxima_mm);

// By maximum likelihood on the greatest of each of several equal patches. None of fewer than
// `at_least` maxima, nor where all are the same: there is no scatter to fit.
std::optional<Gumbel> fit_gumbel(std::span<const double> maxima_mm, int at_least = 5);

// y = -ln(-ln(1 - 1/T)); T over 1.
double reduced_variate(double return_period);

// Depth that the deepest of T patches reaches on average once: location + scale y.
double return_level_mm(const Gumbel& gumbel, double return_period);

// u^2 = scale^2 (1.10867 + 0.51404 y + 0.60793 y^2) / n, the large-sample variance of the
// maximum-likelihood level: 1 + 6(1-g)^2/pi^2, 12(1-g)/pi^2, 6/pi^2 with Euler's g.
double return_level_standard_mm(const Gumbel& gumbel, double return_period, int maxima);

struct DeepestPit {
  double depth_mm = 0;     // never under the deepest seen
  double standard_mm = 0;  // standard uncertainty of the level; 0 at T of 1 or less
  double return_period = 1;
  bool extrapolated = false;  // the level, not the deepest seen, gives the depth
};

// The deepest pit to be expected over the whole affected area, T = area / patch. At T of 1 or less
// it is the deepest seen. None where fit_gumbel has none.
std::optional<DeepestPit> deepest_over(std::span<const double> maxima_mm, double area_mm2,
                                       double patch_mm2, int at_least = 5);

// Deepest / mean penetration, the mean loss of the sheet where it was measured; none where there is
// no mean loss.
std::optional<double> pitting_factor(double deepest_mm, double mean_loss_mm);

// What a pit leaves, as a fraction of the sheet: (metal - pit)/t0. Without readings at the spot,
// metal_mm is t0. Under 0 where the pit is deeper than the metal.
double pit_left(double metal_mm, double pit_mm, double sheet_mm);

}  // namespace tinworm::metal
