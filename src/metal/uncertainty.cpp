#include "metal/uncertainty.hpp"

#include <cmath>
#include <stdexcept>

// The only source that includes Boost.Math: it costs seconds to compile.
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace tinworm::metal {

namespace {

// In double throughout: Boost would promote to long double, slower, for digits that nobody reads.
using InDouble = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
using Normal = boost::math::normal_distribution<double, InDouble>;
using StudentT = boost::math::students_t_distribution<double, InDouble>;

}  // namespace

double rectangular(double half_width) {
  return half_width / std::sqrt(3.0);
}

double combined_standard(std::span<const Component> budget) {
  double sum = 0;
  for (const Component& c : budget) sum += std::pow(c.sensitivity * c.standard, 2);
  return std::sqrt(sum);
}

std::optional<double> effective_degrees_of_freedom(std::span<const Component> budget) {
  // Taken relative to the combined uncertainty, so that no fourth power runs out of range.
  const double combined = combined_standard(budget);
  if (combined == 0) return std::nullopt;
  double sum = 0;
  for (const Component& c : budget) {
    if (c.degrees_of_freedom)
      sum += std::pow(c.sensitivity * c.standard / combined, 4) / *c.degrees_of_freedom;
  }
  if (sum == 0) return std::nullopt;
  return 1 / sum;
}

double student_t_quantile(double p, std::optional<double> degrees_of_freedom) {
  if (!(p > 0 && p < 1)) throw std::domain_error("a quantile needs a probability between 0 and 1");
  if (!degrees_of_freedom) return boost::math::quantile(Normal(), p);
  if (!(*degrees_of_freedom > 0)) throw std::domain_error("degrees of freedom must be over 0");
  return boost::math::quantile(StudentT(*degrees_of_freedom), p);
}

double student_t_two_sided(double t, std::optional<double> degrees_of_freedom) {
  const double below = -std::abs(t);
  if (!degrees_of_freedom) return 2 * boost::math::cdf(Normal(), below);
  if (!(*degrees_of_freedom > 0)) throw std::domain_error("degrees of freedom must be over 0");
  return 2 * boost::math::cdf(StudentT(*degrees_of_freedom), below);
}

double coverage_factor(double coverage, std::optional<double> degrees_of_freedom) {
  return student_t_quantile((1 + coverage) / 2, degrees_of_freedom);
}

Expanded expanded(std::span<const Component> budget, double coverage) {
  const double standard = combined_standard(budget);
  const auto dof = effective_degrees_of_freedom(budget);
  const double factor = coverage_factor(coverage, dof);
  return {standard, dof, factor, factor * standard};
}

}  // namespace tinworm::metal
