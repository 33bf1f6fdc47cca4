#include "quantity/date.hpp"

#include <array>

#include <fmt/format.h>

#include "quantity/ascii.hpp"

namespace tinworm::quantity {
namespace {

using namespace std::chrono;

constexpr int first_year = 1885;
constexpr int last_year = 2199;
constexpr std::string_view forms = "2025-04-12, 2025-04, 2025";
constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                            "July",    "August",   "September", "October", "November", "December"};
static_assert(months.size() == 12);

// dddd, dddd-dd or dddd-dd-dd.
bool well_formed(std::string_view text) {
  if (text.size() != 4 && text.size() != 7 && text.size() != 10) return false;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (i == 4 || i == 7 ? text[i] != '-' : !is_digit(text[i])) return false;
  return true;
}

int number(std::string_view digits) {
  int value = 0;
  for (const char c : digits) value = value * 10 + (c - '0');
  return value;
}

tl::unexpected<Refusal> refuse(std::string what, std::string cure, int offset) {
  return tl::make_unexpected(Refusal{std::move(what), std::string(forms), std::move(cure), offset});
}

int days_in(int year, int month) {
  const year_month_day_last end{std::chrono::year(year) /
                                std::chrono::month(static_cast<unsigned>(month)) / last};
  return static_cast<int>(static_cast<unsigned>(end.day()));
}

sys_days day_of(int year, int month, int day) {
  return sys_days{std::chrono::year(year) / std::chrono::month(static_cast<unsigned>(month)) /
                  std::chrono::day(static_cast<unsigned>(day))};
}

double days_between(sys_days from, sys_days to) {
  return static_cast<double>((to - from).count());
}

// Days from the start of `year`, as a share of that year's days.
double decimal_year(int year, double days) {
  const double length = days_between(day_of(year, 1, 1), day_of(year + 1, 1, 1));
  return year + days / length;
}

}  // namespace

sys_days PartialDate::first() const {
  return day_of(year, month == 0 ? 1 : month, day == 0 ? 1 : day);
}

sys_days PartialDate::last() const {
  const int end_month = month == 0 ? 12 : month;
  return day_of(year, end_month, day == 0 ? days_in(year, end_month) : day);
}

double PartialDate::middle_year() const {
  const double before = days_between(day_of(year, 1, 1), first());
  const double length = days_between(first(), last()) + 1;
  return decimal_year(year, before + length / 2);
}

double PartialDate::half_width_years() const {
  if (day != 0) return 0;
  const double length = days_between(first(), last()) + 1;
  return decimal_year(year, length / 2) - year;
}

std::string PartialDate::text() const {
  if (month == 0) return fmt::format("{:04}", year);
  if (day == 0) return fmt::format("{:04}-{:02}", year, month);
  return fmt::format("{:04}-{:02}-{:02}", year, month, day);
}

tl::expected<PartialDate, Refusal> parse_date(std::string_view text) {
  if (!well_formed(text))
    return refuse("a date is year, month and day in digits, of which the last may be left out",
                  "write it as 2025-04-12", 0);
  const PartialDate date{number(text.substr(0, 4)), text.size() > 4 ? number(text.substr(5, 2)) : 0,
                         text.size() > 7 ? number(text.substr(8, 2)) : 0};
  if (date.year < first_year || date.year > last_year)
    return refuse(fmt::format("a year lies between {} and {}", first_year, last_year),
                  "look for a slip in the year", 0);
  if (text.size() > 4 && (date.month < 1 || date.month > 12))
    return refuse("a year has months 01 to 12", "write year, month, day in this order", 5);
  if (text.size() > 7 && (date.day < 1 || date.day > days_in(date.year, date.month)))
    return refuse(
        fmt::format("{} {} has days 01 to {}", months[static_cast<std::size_t>(date.month - 1)],
                    date.year, days_in(date.year, date.month)),
        fmt::format("where the day isn't known, write {}", text.substr(0, 7)), 8);
  return date;
}

double years_between(const PartialDate& from, const PartialDate& to) {
  return to.middle_year() - from.middle_year();
}

}  // namespace tinworm::quantity
