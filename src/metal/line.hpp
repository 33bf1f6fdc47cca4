// A straight line through readings over the years, by weighted least squares.
#pragma once

#include <optional>
#include <span>

namespace tinworm::metal {

struct LinePoint {
  double x = 0;         // years
  double y = 0;         // mm
  double standard = 1;  // standard uncertainty of y, over 0; the weight is 1/standard^2
};

struct Line {
  double intercept = 0;
  double slope = 0;
  double intercept_standard = 0;
  double slope_standard = 0;
  // Standard deviation of the residuals in units of each point's own standard uncertainty: 1 where
  // the points scatter as much as they claim.
  double residual = 0;
  double degrees_of_freedom = 0;
};

// Weights 1/standard^2. The variance of the weighted residuals is pooled with a prior of 1 on
// `prior_degrees_of_freedom` (the points scatter as they claim), as repeatability is:
// residual^2 = (v0 + sum (r/standard)^2)/(v0 + n - 2). With v0 = 0 it is ordinary least squares.
// None of fewer than three points, or where all stand at one x.
std::optional<Line> fit_line(std::span<const LinePoint> points, double prior_degrees_of_freedom);

struct Bounds {
  double low = 0;
  double high = 0;
};
Bounds slope_interval(const Line& line, double coverage);

}  // namespace tinworm::metal
