// How well readings of one gauge repeat: the scatter of a single reading, pooled over a survey.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace tinworm::metal {

// Of the readings of one place; `readings` must not be empty.
double mean(std::span<const double> readings);
double least(std::span<const double> readings);
double greatest(std::span<const double> readings);
double spread(std::span<const double> readings);  // greatest - least

// With n - 1 in the denominator; none of fewer than two readings.
std::optional<double> standard_deviation(std::span<const double> readings);

// What is taken to be known of the gauge before the survey's own readings speak.
struct Prior {
  double standard_mm = 0.04;      // of one reading; memory
  double degrees_of_freedom = 5;  // how many readings' worth of trust the prior gets
  double spread_limit_mm = 0.30;  // a set that differs by more is no repeat of one figure
};

// Standard deviation of one reading, with its degrees of freedom.
struct Repeatability {
  double standard_mm = 0;
  double degrees_of_freedom = 0;
  bool operator==(const Repeatability&) const = default;
};

// Readings that differ by more than the limit (1e-9 mm to spare for decimal input).
bool too_wide(std::span<const double> readings, const Prior& prior);

// s^2 = (v0 s0^2 + sum (n-1) s_i^2) / (v0 + sum (n-1)) over every set that isn't too wide; its
// degrees of freedom are the denominator (a pooled estimate of variance, GUM 4.2.4 from memory; the
// prior enters as one more set). Sets of one reading, or none, add nothing.
Repeatability pooled(const std::vector<std::vector<double>>& sets, const Prior& prior);

// The repeatability that counts for one set: the survey's, or for a set that is too wide its own
// scatter pooled with the prior alone.
Repeatability repeatability_of(std::span<const double> readings, const Repeatability& survey,
                               const Prior& prior);

}  // namespace tinworm::metal
