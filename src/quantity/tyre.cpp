#include "quantity/tyre.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace tinworm::quantity {
namespace {

constexpr double weeks_in_a_year = 365.25 / 7;

tl::unexpected<Refusal> refuse(std::string what, std::string cure) {
  return tl::make_unexpected(Refusal{
      std::move(what), "\"0301\" (week 3 of 2001), \"317\" (before 2000)", std::move(cure), 0});
}

}  // namespace

std::string TyreDate::text() const {
  if (year) return fmt::format("week {} of {}", week, *year);
  return fmt::format("week {} of a year ending in {}, before 2000", week, last_figure);
}

tl::expected<TyreDate, Refusal> parse_tyre_code(std::string_view text) {
  const bool digits =
      std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!digits || (text.size() != 3 && text.size() != 4))
    return refuse("a tyre date code is the last three or four digits on the tyre's wall",
                  "leave out letters and spaces");
  const auto figure = [&](std::size_t i) { return text[i] - '0'; };
  TyreDate made{figure(0) * 10 + figure(1), std::nullopt, text.back() - '0'};
  if (made.week < 1 || made.week > 53)
    return refuse("a tyre date code starts with its week, 01 to 53", "look at the tyre again");
  if (text.size() == 4) made.year = 2000 + figure(2) * 10 + figure(3);
  return made;
}

std::optional<double> age_years(const TyreDate& made, const PartialDate& on) {
  if (!made.year) return std::nullopt;
  return on.middle_year() - (*made.year + (made.week - 0.5) / weeks_in_a_year);
}

}  // namespace tinworm::quantity
