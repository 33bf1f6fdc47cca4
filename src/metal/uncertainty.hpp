// Measurement uncertainty by the GUM (JCGM 100:2008, its clauses numbered from memory): components,
// their combination, effective degrees of freedom and the expanded interval.
#pragma once

#include <optional>
#include <span>
#include <string>

namespace tinworm::metal {

// One line of an uncertainty budget. Components are taken as uncorrelated: an error that enters
// twice must stand once, with the sum of its sensitivities.
struct Component {
  std::string what;                          // "repeatability of the spot's mean"
  double standard = 0;                       // in the unit of the quantity itself, >= 0
  double sensitivity = 1;                    // of the result to it
  std::optional<double> degrees_of_freedom;  // > 0; none: infinite
};

// Standard uncertainty of a quantity that lies anywhere within +/- half_width with equal
// probability (GUM 4.3.7).
double rectangular(double half_width);

// Root sum of squares of sensitivity x standard (GUM 5.1.2); 0 of nothing.
double combined_standard(std::span<const Component> budget);

// Welch-Satterthwaite (GUM G.4.1), not truncated to a whole number; none: infinite.
std::optional<double> effective_degrees_of_freedom(std::span<const Component> budget);

// Quantile of Student's t, of the normal distribution where the degrees of freedom are none.
// Throws std::domain_error unless 0 < p < 1 and the degrees of freedom are > 0.
double student_t_quantile(double p, std::optional<double> degrees_of_freedom);

// Two-sided probability that |t| is at least this great by chance.
double student_t_two_sided(double t, std::optional<double> degrees_of_freedom);

// k such that value +/- k u covers the given share (GUM G.3.2): Student t at (1 + coverage)/2.
double coverage_factor(double coverage, std::optional<double> degrees_of_freedom);

struct Expanded {
  double standard = 0;                       // combined
  std::optional<double> degrees_of_freedom;  // effective; none: infinite
  double factor = 0;                         // k
  double half_width = 0;                     // k x standard
};

Expanded expanded(std::span<const Component> budget, double coverage);

}  // namespace tinworm::metal
