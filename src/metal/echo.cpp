#include "metal/echo.hpp"

#include <algorithm>

#include "metal/film.hpp"
#include "metal/repeatability.hpp"

namespace tinworm::metal {

std::optional<EchoCorrection> echo_correction(std::span<const double> film_um,
                                              const EchoRule& rule) {
  if (film_um.empty()) return std::nullopt;
  const double median_um = median(film_um);
  if (median_um > rule.paint_limit_um) return std::nullopt;
  const double scatter_um = standard_deviation(film_um).value_or(0);
  const double standard_um = std::max(scatter_um, rule.least_share * median_um);
  constexpr double mm_per_um = 1e-3;
  return EchoCorrection{rule.times_film * median_um * mm_per_um,
                        rule.times_film * standard_um * mm_per_um};
}

}  // namespace tinworm::metal
