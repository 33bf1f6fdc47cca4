#include "metal/repeatability.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tinworm::metal {

double mean(std::span<const double> readings) {
  return std::accumulate(readings.begin(), readings.end(), 0.0) /
         static_cast<double>(readings.size());
}

double least(std::span<const double> readings) {
  return std::ranges::min(readings);
}

double greatest(std::span<const double> readings) {
  return std::ranges::max(readings);
}

double spread(std::span<const double> readings) {
  return greatest(readings) - least(readings);
}

namespace {

double squares_about_mean(std::span<const double> readings) {
  const double middle = mean(readings);
  return std::accumulate(readings.begin(), readings.end(), 0.0, [middle](double sum, double r) {
    return sum + (r - middle) * (r - middle);
  });
}

}  // namespace

std::optional<double> standard_deviation(std::span<const double> readings) {
  if (readings.size() < 2) return std::nullopt;
  return std::sqrt(squares_about_mean(readings) / static_cast<double>(readings.size() - 1));
}

bool too_wide(std::span<const double> readings, const Prior& prior) {
  constexpr double decimal_slack_mm = 1e-9;  // 0.95 - 0.65 is a little over 0.30 in binary
  return !readings.empty() && spread(readings) > prior.spread_limit_mm + decimal_slack_mm;
}

namespace {

// Sum of squares and degrees of freedom while pooling; starts at the prior's.
struct Pool {
  double squares = 0;
  double degrees_of_freedom = 0;

  explicit Pool(const Prior& prior)
      : squares(prior.degrees_of_freedom * prior.standard_mm * prior.standard_mm),
        degrees_of_freedom(prior.degrees_of_freedom) {}

  void add(std::span<const double> readings) {
    if (readings.size() < 2) return;
    squares += squares_about_mean(readings);
    degrees_of_freedom += static_cast<double>(readings.size() - 1);
  }

  Repeatability result() const {
    return {std::sqrt(squares / degrees_of_freedom), degrees_of_freedom};
  }
};

}  // namespace

Repeatability pooled(const std::vector<std::vector<double>>& sets, const Prior& prior) {
  Pool pool(prior);
  for (const auto& readings : sets) {
    if (!too_wide(readings, prior)) pool.add(readings);
  }
  return pool.result();
}

Repeatability repeatability_of(std::span<const double> readings, const Repeatability& survey,
                               const Prior& prior) {
  if (!too_wide(readings, prior)) return survey;
  Pool pool(prior);
  pool.add(readings);
  return pool.result();
}

}  // namespace tinworm::metal
