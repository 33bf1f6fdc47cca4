// How much thinner a place became between surveys, and how fast. Losses are over 0.
#pragma once

#include <span>

#include "history/comparison.hpp"
#include "history/year.hpp"
#include "metal/uncertainty.hpp"

namespace tinworm::history {

// Before less now, mm. The sheet that was there stands in both and cancels. The scatter of both
// counts, and what a coating's correction may be wrong by; the gauge's own error only where
// `one_gauge` is false: one gauge errs in both alike. 95 %, by the GUM; the prior that both
// estimates of scatter rest on counts its degrees of freedom once.
struct Difference {
  double lost_mm = 0;
  metal::Expanded uncertainty;

  weighing::Span span() const;
};
Difference difference(const Reading& before, const Reading& now, bool one_gauge,
                      const rules::Rules& rules);

// Decimal years between two surveys, middle to middle of their dates, and the standard uncertainty
// of that where dates are partial (rectangular).
struct Between {
  double years = 0;
  double standard_years = 0;
};
Between between(const quantity::PartialDate& from, const quantity::PartialDate& to);

// A loss over the years it took; its ends widened by what the dates leave open.
metal::RateRange rate_over(const weighing::Span& lost_mm, const Between& time);

// What is lost from the first of three or more readings to the last, by a straight line: weights
// 1/u^2, the residual pooled with what the scatter of the readings rests on (the prior and all
// repeats), Student t. A date's uncertainty counts as metal at the line's slope.
struct LineLoss {
  weighing::Span lost_mm;
  metal::RateRange per_year;
};
LineLoss line_loss(std::span<const Reading> readings, const std::vector<ZoneYear>& zone,
                   bool one_gauge, const rules::Rules& rules);

// The thickness with its interval, the gauge's own error included.
Thickness thickness(const Reading& reading);

}  // namespace tinworm::history
