// The date code on a tyre's wall: the last three or four digits after the maker's letters.
// Sources: 49 CFR 574.5 and 64 FR 36807: four digits, week then year, on tyres made from 2000.
// Before that three digits, week and last figure of the year: the decade isn't in the code.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/date.hpp"
#include "quantity/refusal.hpp"

namespace tinworm::quantity {

struct TyreDate {
  int week = 0;              // 1 to 53
  std::optional<int> year;   // none: three digits, decade unknown
  int last_figure = 0;       // of the year
  std::string text() const;  // "week 3 of 2001"; "week 31 of a year ending in 7, before 2000"
  auto operator<=>(const TyreDate&) const = default;
};

tl::expected<TyreDate, Refusal> parse_tyre_code(std::string_view text);

// Age on that day, from the middle of the week; none where the decade is unknown. Negative where
// the code names a week after the day.
std::optional<double> age_years(const TyreDate& made, const PartialDate& on);

}  // namespace tinworm::quantity
