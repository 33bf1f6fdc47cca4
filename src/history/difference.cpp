#include "history/difference.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "metal/line.hpp"

namespace tinworm::history {
namespace {

constexpr double coverage = 0.95;

metal::Component scatter(const char* what, const Reading& reading) {
  const metal::Measured& m = reading.metal;
  return {what, m.repeatability.standard_mm / std::sqrt(m.count), 1,
          m.repeatability.degrees_of_freedom};
}

// Scatter of both as one line. Each estimate rests on the same prior, whose degrees of freedom
// count once.
metal::Component scatter_of_both(const Reading& before, const Reading& now, double prior_degrees) {
  const std::vector<metal::Component> both{scatter("before", before), scatter("now", now)};
  const double degrees = *both[0].degrees_of_freedom + *both[1].degrees_of_freedom - prior_degrees;
  return {"scatter", metal::combined_standard(both), 1,
          std::min(degrees, metal::effective_degrees_of_freedom(both).value_or(degrees))};
}

double square(double x) {
  return x * x;
}

}  // namespace

weighing::Span Difference::span() const {
  return {lost_mm - uncertainty.half_width, lost_mm, lost_mm + uncertainty.half_width};
}

Difference difference(const Reading& before, const Reading& now, bool one_gauge,
                      const rules::Rules& rules) {
  std::vector<metal::Component> budget{scatter_of_both(before, now, rules.prior_degrees)};
  for (const Reading* each : {&before, &now}) {
    if (each->metal.coating_mm > 0)
      budget.push_back({"coating left on", each->metal.coating_mm, 1, each->metal.coating_degrees});
    if (!one_gauge) budget.push_back({"gauge", each->gauge_standard_mm, 1, {}});
  }
  return {before.metal.mean_mm - now.metal.mean_mm, metal::expanded(budget, coverage)};
}

Between between(const quantity::PartialDate& from, const quantity::PartialDate& to) {
  return {years_between(from, to), std::hypot(metal::rectangular(from.half_width_years()),
                                              metal::rectangular(to.half_width_years()))};
}

metal::RateRange rate_over(const weighing::Span& lost_mm, const Between& time) {
  const double rate = lost_mm.value / time.years;
  const double of_dates =
      metal::coverage_factor(coverage, {}) * std::abs(rate) * time.standard_years / time.years;
  const double down = std::hypot((lost_mm.value - lost_mm.low) / time.years, of_dates);
  const double up = std::hypot((lost_mm.high - lost_mm.value) / time.years, of_dates);
  return {rate - down, rate, rate + up};
}

LineLoss line_loss(std::span<const Reading> readings, const std::vector<ZoneYear>& zone,
                   bool one_gauge, const rules::Rules& rules) {
  const quantity::PartialDate& first = zone[readings.front().survey].year->date();
  const quantity::PartialDate& last = zone[readings.back().survey].year->date();
  // What the weights rest on: the prior once, and the repeats of every survey.
  double degrees = rules.prior_degrees;
  for (const Reading& each : readings)
    degrees += each.metal.repeatability.degrees_of_freedom - rules.prior_degrees;
  std::optional<metal::Line> line;
  // The slope enters the uncertainty of the points: two rounds more settle it.
  for (int round = 0; round < 3; ++round) {
    std::vector<metal::LinePoint> points;
    for (const Reading& each : readings) {
      const quantity::PartialDate& date = zone[each.survey].year->date();
      const double of_date = line ? line->slope * metal::rectangular(date.half_width_years()) : 0;
      const double gauge_mm = one_gauge ? 0 : each.gauge_standard_mm;
      points.push_back(
          {years_between(first, date), each.metal.mean_mm,
           std::sqrt(square(each.standard_mm()) + square(gauge_mm) + square(of_date))});
    }
    line = metal::fit_line(points, degrees);
    if (!line) throw std::logic_error("a line needs three surveys of different dates");
  }
  const metal::Bounds slope = metal::slope_interval(*line, coverage);
  const double years = years_between(first, last);
  return {{-slope.high * years, -line->slope * years, -slope.low * years},
          {-slope.high, -line->slope, -slope.low}};
}

Thickness thickness(const Reading& reading) {
  std::vector<metal::Component> budget{scatter("scatter", reading),
                                       {"gauge", reading.gauge_standard_mm, 1, {}}};
  if (reading.metal.coating_mm > 0)
    budget.push_back(
        {"coating left on", reading.metal.coating_mm, 1, reading.metal.coating_degrees});
  const metal::Expanded u = metal::expanded(budget, coverage);
  const double mm = reading.metal.mean_mm;
  return {mm, std::max(0.0, mm - u.half_width), mm + u.half_width, reading.metal.count};
}

}  // namespace tinworm::history
