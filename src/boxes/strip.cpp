#include "boxes/strip.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tinworm::boxes {

double shear_path(double width_mm, double sheet_mm, const std::vector<Strip>& strips) {
  double path_mm = width_mm;
  for (const Strip& strip : strips) {
    const double b = std::clamp(strip.width_mm, 0.0, width_mm);
    if (b == 0) continue;
    const double longer_mm =
        strip.lambda > 0 ? b * (1 / strip.lambda - 1) : std::numeric_limits<double>::infinity();
    const double bridged = 1 + (strip.to_mm - strip.from_mm) / width_mm;
    path_mm += std::min(longer_mm, width_mm / 4 * std::pow(10, b / width_mm) * bridged * bridged);
  }
  return path_mm / sheet_mm;
}

double open_torsion_mm4(double width_mm, double sheet_mm, const std::vector<Strip>& strips) {
  double sound_mm = width_mm, thinned_mm = 0;
  for (const Strip& strip : strips) {
    const double b = std::clamp(strip.width_mm, 0.0, sound_mm);
    sound_mm -= b;
    thinned_mm += b * std::pow(strip.lambda, 3);
  }
  return (sound_mm + thinned_mm) * std::pow(sheet_mm, 3) / 3;
}

double bending_sheet_mm(double width_mm, double sheet_mm, const std::vector<Strip>& strips) {
  double left = 1;
  for (const Strip& strip : strips) {
    left -= (1 - strip.lambda) * std::clamp(strip.width_mm / width_mm, 0.0, 1.0);
  }
  return sheet_mm * std::max(left, 0.0);
}

}  // namespace tinworm::boxes
