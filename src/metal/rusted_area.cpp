#include "metal/rusted_area.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace tinworm::metal {

namespace {

// Upper bounds as shares, per cent / 100.
// ISO 4628-3:2016, Ri 0 to 4 (quoted); anything over is Ri 5.
constexpr std::array iso_bounds{0.0, 0.0005, 0.005, 0.01, 0.08};
// ASTM D610-08 (2012) Table 1, grade 10 down to 0.
constexpr std::array astm_bounds{0.0001, 0.0003, 0.001, 0.003, 0.01, 0.03,
                                 0.10,   0.16,   0.33,  0.50,  1.0};

// How many bounds lie below the share.
template <std::size_t size>
int bounds_below(const std::array<double, size>& bounds, double share) {
  const double spared = share * (1 - 1e-9);
  return static_cast<int>(std::ranges::lower_bound(bounds, spared) - bounds.begin());
}

}  // namespace

int iso4628_3(double share) {
  return bounds_below(iso_bounds, share);
}

int astm_d610(double share) {
  return 10 - bounds_below(astm_bounds, std::min(share, 1.0));
}

double astm_d610_continuous(double share) {
  const double area = std::min(share, 1.0);
  const int below = bounds_below(astm_bounds, area);
  if (below == 0) return 10;
  const double low = std::log10(astm_bounds[below - 1]), high = std::log10(astm_bounds[below]);
  return 11 - below - (std::log10(area) - low) / (high - low);
}

}  // namespace tinworm::metal
