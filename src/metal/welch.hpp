// Whether two sets of readings differ: Welch's t test, for unequal variances.
#pragma once

#include <optional>
#include <span>

#include "metal/line.hpp"

namespace tinworm::metal {

struct Sample {
  int count = 0;
  double mean = 0;
  double standard_deviation = 0;
};
Sample sample_of(std::span<const double> readings);  // at least two

struct Welch {
  double t = 0;
  double degrees_of_freedom = 0;
  double two_sided = 0;  // probability of so great a |t| by chance
  Bounds difference;     // of the means, first less second, at the given coverage
};

// None where a sample has fewer than two readings or neither has any scatter.
std::optional<Welch> welch(const Sample& first, const Sample& second, double coverage = 0.95);

}  // namespace tinworm::metal
