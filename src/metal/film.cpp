#include "metal/film.hpp"

#include <algorithm>
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

}  // namespace tinworm::metal
