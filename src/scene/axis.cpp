#include "scene/axis.hpp"

#include <cmath>

namespace tinworm::scene {
namespace {

constexpr double spare = 1e-9;  // decimal input

}  // namespace

std::vector<double> Axis::ticks() const {
  std::vector<double> all;
  const int count = static_cast<int>(std::lround((high - low) / step));
  for (int i = 0; i <= count; ++i) all.push_back(low + i * step);
  return all;
}

Axis axis_over(double low, double high, const std::vector<double>& steps, int most) {
  Axis axis;
  for (const double step : steps) {
    axis.step = step;
    axis.low = step * std::floor(low / step + spare);
    axis.high = step * std::ceil(high / step - spare);
    if (axis.high - axis.low < step / 2) axis.high = axis.low + step;
    if ((axis.high - axis.low) / step < most + 0.5) break;
  }
  return axis;
}

}  // namespace tinworm::scene
