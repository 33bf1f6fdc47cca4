#include "metal/echo.hpp"

#include <cmath>

#include "metal/film.hpp"
#include "metal/repeatability.hpp"

namespace tinworm::metal {

std::optional<EchoCorrection> echo_correction(std::span<const double> film_um,
                                              const EchoRule& rule) {
  if (film_um.empty()) return std::nullopt;
  constexpr double decimal_slack_um = 1e-6;
  const double median_um = median(film_um);
  if (median_um > rule.paint_limit_um + decimal_slack_um) return std::nullopt;
  const double n = static_cast<double>(film_um.size());
  const double own_um = standard_deviation(film_um).value_or(0);
  const double prior_um = rule.prior_share * median_um;
  const double degrees = rule.prior_degrees + n - 1;
  const double scatter_um =
      std::sqrt((rule.prior_degrees * prior_um * prior_um + (n - 1) * own_um * own_um) / degrees);
  constexpr double mm_per_um = 1e-3;
  return EchoCorrection{rule.times_film * median_um * mm_per_um,
                        rule.times_film * scatter_um * std::sqrt(1 + 1 / n) * mm_per_um, degrees};
}

}  // namespace tinworm::metal
