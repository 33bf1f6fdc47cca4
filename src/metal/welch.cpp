#include "metal/welch.hpp"

#include <array>
#include <cmath>

#include "metal/repeatability.hpp"
#include "metal/uncertainty.hpp"

namespace tinworm::metal {

Sample sample_of(std::span<const double> readings) {
  return {static_cast<int>(readings.size()), mean(readings), standard_deviation(readings).value()};
}

namespace {

Component mean_of(const Sample& sample, double sensitivity) {
  return {"mean", sample.standard_deviation / std::sqrt(sample.count), sensitivity,
          sample.count - 1.0};
}

}  // namespace

std::optional<Welch> welch(const Sample& first, const Sample& second, double coverage) {
  if (first.count < 2 || second.count < 2) return std::nullopt;
  const std::array budget{mean_of(first, 1), mean_of(second, -1)};
  const Expanded u = expanded(budget, coverage);
  if (u.standard == 0) return std::nullopt;
  const double difference = first.mean - second.mean, t = difference / u.standard;
  return Welch{t,
               *u.degrees_of_freedom,
               student_t_two_sided(t, u.degrees_of_freedom),
               {difference - u.half_width, difference + u.half_width}};
}

}  // namespace tinworm::metal
