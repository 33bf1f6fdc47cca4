#include "metal/line.hpp"

#include <algorithm>
#include <cmath>

#include "metal/uncertainty.hpp"

namespace tinworm::metal {

namespace {

struct Sums {
  double weight = 0, x = 0, y = 0;  // of weights; weighted means of x and y
  double xx = 0, xy = 0;            // weighted squares and products about the means
};

double weight_of(const LinePoint& p) {
  return 1 / (p.standard * p.standard);
}

Sums sums_of(std::span<const LinePoint> points) {
  Sums s;
  for (const LinePoint& p : points) {
    s.weight += weight_of(p);
    s.x += weight_of(p) * p.x;
    s.y += weight_of(p) * p.y;
  }
  s.x /= s.weight;
  s.y /= s.weight;
  for (const LinePoint& p : points) {
    s.xx += weight_of(p) * (p.x - s.x) * (p.x - s.x);
    s.xy += weight_of(p) * (p.x - s.x) * (p.y - s.y);
  }
  return s;
}

}  // namespace

std::optional<Line> fit_line(std::span<const LinePoint> points, double prior_degrees_of_freedom) {
  // By the dates themselves: rounding leaves a little of s.xx even where all are the same.
  const auto elsewhere = [&](const LinePoint& p) { return p.x != points.front().x; };
  if (points.size() < 3 || std::ranges::none_of(points, elsewhere)) return std::nullopt;
  const Sums s = sums_of(points);

  Line line;
  line.slope = s.xy / s.xx;
  line.intercept = s.y - line.slope * s.x;
  double squares = prior_degrees_of_freedom;
  for (const LinePoint& p : points)
    squares += weight_of(p) * std::pow(p.y - line.intercept - line.slope * p.x, 2);
  line.degrees_of_freedom = prior_degrees_of_freedom + static_cast<double>(points.size()) - 2;
  line.residual = std::sqrt(squares / line.degrees_of_freedom);
  line.slope_standard = line.residual / std::sqrt(s.xx);
  line.intercept_standard = line.residual * std::sqrt(1 / s.weight + s.x * s.x / s.xx);
  return line;
}

Bounds slope_interval(const Line& line, double coverage) {
  const double half = coverage_factor(coverage, line.degrees_of_freedom) * line.slope_standard;
  return {line.slope - half, line.slope + half};
}

}  // namespace tinworm::metal
