#include "metal/film.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace tinworm::metal {

std::string_view word(FilmWord film) {
  switch (film) {
    case FilmWord::factory:
      return "factory";
    case FilmWord::repainted:
      return "repainted";
    case FilmWord::heavy:
      return "heavy";
    case FilmWord::filler_likely:
      return "filler-likely";
  }
  return {};
}

FilmWord film_word(double greatest_um, const FilmLimits& limits) {
  if (greatest_um <= limits.factory_um) return FilmWord::factory;
  if (greatest_um <= limits.repainted_um) return FilmWord::repainted;
  if (greatest_um <= limits.heavy_um) return FilmWord::heavy;
  return FilmWord::filler_likely;
}

double median(std::span<const double> readings) {
  std::vector<double> sorted(readings.begin(), readings.end());
  std::ranges::sort(sorted);
  const auto middle = sorted.size() / 2;
  return sorted.size() % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

std::vector<FilmOddity> film_oddities(std::span<const double> panels_um,
                                      const FilmOddityLimits& limits) {
  std::vector<FilmOddity> found;
  if (static_cast<int>(panels_um.size()) < limits.least_panels) return found;
  constexpr double deviations_per_mad = 1.4826;  // 1 / the normal quantile of 3/4
  const double middle_um = median(panels_um);
  std::vector<double> off_um;
  for (const double film_um : panels_um) off_um.push_back(std::abs(film_um - middle_um));
  const double scatter_um =
      std::max(deviations_per_mad * median(off_um), limits.least_share * middle_um);
  for (const double film_um : panels_um) {
    const double score = (film_um - middle_um) / scatter_um;
    found.push_back({score, std::abs(score) > limits.score});
  }
  return found;
}

}  // namespace tinworm::metal
