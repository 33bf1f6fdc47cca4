// ISO 8601 calendar dates that may be partial: a year or a month is an interval of days.
#pragma once

#include <chrono>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/refusal.hpp"

namespace tinworm::quantity {

struct PartialDate {
  int year = 0;
  int month = 0;  // 0: not given
  int day = 0;    // 0: not given

  std::chrono::sys_days first() const;  // first day of the interval
  std::chrono::sys_days last() const;   // last day, inclusive
  double middle_year() const;           // middle of the interval as a decimal year, 2025.28
  double half_width_years() const;      // half the interval: 0 for a whole date
  std::string text() const;             // as written: 2025, 2025-04, 2025-04-12
  auto operator<=>(const PartialDate&) const = default;
};

// Years 1885 to 2199. Refuses what no calendar has (2023-02-29) and other orders and signs.
tl::expected<PartialDate, Refusal> parse_date(std::string_view text);

double years_between(const PartialDate& from, const PartialDate& to);  // middle to middle

}  // namespace tinworm::quantity
