#include "metal/pits.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "metal/repeatability.hpp"

namespace tinworm::metal {

double log_likelihood(const Gumbel& gumbel, std::span<const double> maxima_mm) {
  double sum = 0;
  for (const double x : maxima_mm) {
    const double z = (x - gumbel.location_mm) / gumbel.scale_mm;
    sum -= std::log(gumbel.scale_mm) + z + std::exp(-z);
  }
  return sum;
}

namespace {

// At a given scale: the sum of exp(-d/scale) and the mean of d weighted by it, d above the least so
// that nothing overflows.
struct Weighted {
  double sum = 0;
  double mean = 0;
};

Weighted weighted(std::span<const double> maxima, double least, double scale) {
  double sum = 0, first = 0;
  for (const double x : maxima) {
    const double d = x - least, e = std::exp(-d / scale);
    sum += e;
    first += d * e;
  }
  return {sum, first / sum};
}

// The likelihood is greatest where scale = mean - weighted mean. The left side less the right grows
// with the scale, is under 0 near 0 and over 0 at mean - least: halve until the middle stands.
double likeliest_scale(std::span<const double> maxima, double least, double mean_above_least) {
  double low = 0, high = mean_above_least;
  for (double scale = high / 2; low < scale && scale < high; scale = (low + high) / 2) {
    const bool too_small = scale - mean_above_least + weighted(maxima, least, scale).mean < 0;
    (too_small ? low : high) = scale;
  }
  return high;
}

}  // namespace

std::optional<Gumbel> fit_gumbel(std::span<const double> maxima_mm, int at_least) {
  if (maxima_mm.empty() || std::ssize(maxima_mm) < at_least) return std::nullopt;
  const double lowest = least(maxima_mm);
  if (greatest(maxima_mm) == lowest) return std::nullopt;

  const double scale = likeliest_scale(maxima_mm, lowest, mean(maxima_mm) - lowest);
  const double mean_weight =
      weighted(maxima_mm, lowest, scale).sum / static_cast<double>(maxima_mm.size());
  return Gumbel{lowest - scale * std::log(mean_weight), scale};
}

double reduced_variate(double return_period) {
  return -std::log(-std::log1p(-1 / return_period));
}

double return_level_mm(const Gumbel& gumbel, double return_period) {
  return gumbel.location_mm + gumbel.scale_mm * reduced_variate(return_period);
}

double return_level_standard_mm(const Gumbel& gumbel, double return_period, int maxima) {
  constexpr double share = 6 / (std::numbers::pi * std::numbers::pi);
  constexpr double rest = 1 - std::numbers::egamma;
  const double y = reduced_variate(return_period);
  const double factor = 1 + share * rest * rest + 2 * share * rest * y + share * y * y;
  return gumbel.scale_mm * std::sqrt(factor / maxima);
}

std::optional<DeepestPit> deepest_over(std::span<const double> maxima_mm, double area_mm2,
                                       double patch_mm2, int at_least) {
  const auto gumbel = fit_gumbel(maxima_mm, at_least);
  if (!gumbel) return std::nullopt;
  const double seen = greatest(maxima_mm), period = area_mm2 / patch_mm2;
  if (!(period > 1)) return DeepestPit{seen, 0, 1, false};
  const double level = return_level_mm(*gumbel, period);
  const double standard =
      return_level_standard_mm(*gumbel, period, static_cast<int>(maxima_mm.size()));
  return DeepestPit{std::max(level, seen), standard, period, level > seen};
}

std::optional<double> pitting_factor(double deepest_mm, double mean_loss_mm) {
  if (!(mean_loss_mm > 0)) return std::nullopt;
  return deepest_mm / mean_loss_mm;
}

double pit_left(double metal_mm, double pit_mm, double sheet_mm) {
  return (metal_mm - pit_mm) / sheet_mm;
}

}  // namespace tinworm::metal
