// The scale of a chart: even steps that people count in.
#pragma once

#include <vector>

namespace tinworm::scene {

struct Axis {
  double low = 0, high = 1;  // whole steps
  double step = 1;
  std::vector<double> ticks() const;  // from low to high
};

// The smallest of `steps` (rising) at which `low` to `high`, widened to whole steps, has no more
// than `most` of them; the largest where none does.
Axis axis_over(double low, double high, const std::vector<double>& steps, int most);

}  // namespace tinworm::scene
