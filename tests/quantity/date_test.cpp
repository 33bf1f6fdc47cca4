#include "quantity/date.hpp"

#include <gtest/gtest.h>

namespace tinworm::quantity {
namespace {

using std::chrono::days;
using std::chrono::sys_days;
using namespace std::chrono_literals;

TEST(Date, TakesWholeAndPartialDates) {
  struct {
    std::string text;
    PartialDate date;
    sys_days first, last;
    double middle, half_width;
  } const cases[] = {
      {"2025-04-12", {2025, 4, 12}, 2025y / 4 / 12, 2025y / 4 / 12, 2025 + 101.5 / 365, 0},
      {"2025-04", {2025, 4, 0}, 2025y / 4 / 1, 2025y / 4 / 30, 2025 + 105.0 / 365, 15.0 / 365},
      {"2025", {2025, 0, 0}, 2025y / 1 / 1, 2025y / 12 / 31, 2025.5, 0.5},
      {"2024", {2024, 0, 0}, 2024y / 1 / 1, 2024y / 12 / 31, 2024.5, 0.5},
      {"2024-02-29", {2024, 2, 29}, 2024y / 2 / 29, 2024y / 2 / 29, 2024 + 59.5 / 366, 0},
      {"2024-02", {2024, 2, 0}, 2024y / 2 / 1, 2024y / 2 / 29, 2024 + 45.5 / 366, 14.5 / 366},
      {"2000-02-29", {2000, 2, 29}, 2000y / 2 / 29, 2000y / 2 / 29, 2000 + 59.5 / 366, 0},
      {"1885-01-01", {1885, 1, 1}, 1885y / 1 / 1, 1885y / 1 / 1, 1885 + 0.5 / 365, 0},
      {"2199-12-31", {2199, 12, 31}, 2199y / 12 / 31, 2199y / 12 / 31, 2199 + 364.5 / 365, 0},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto date = parse_date(c.text);
    ASSERT_TRUE(date.has_value()) << date.error().what;
    EXPECT_EQ(*date, c.date);
    EXPECT_EQ(date->first(), c.first);
    EXPECT_EQ(date->last(), c.last);
    EXPECT_NEAR(date->middle_year(), c.middle, 1e-9);
    EXPECT_NEAR(date->half_width_years(), c.half_width, 1e-9);
    EXPECT_EQ(date->text(), c.text);
  }
}

TEST(Date, RefusesWhatNoCalendarHas) {
  const std::string shape =
      "a date is year, month and day in digits, of which the last may be left out";
  const std::string months = "a year has months 01 to 12";
  const std::string years = "a year lies between 1885 and 2199";
  struct {
    std::string text, what;
    int offset;
  } const cases[] = {
      {"", shape, 0},
      {"25-04-12", shape, 0},
      {"12-04-2025", shape, 0},
      {"12.04.2025", shape, 0},
      {"2025/04/12", shape, 0},
      {"2025-4-12", shape, 0},
      {"2025-04-1", shape, 0},
      {"2025-04-12T10:00", shape, 0},
      {"20250412", shape, 0},
      {"-2025", shape, 0},
      {"+2025-04", shape, 0},
      {" 2025", shape, 0},
      {"2025-", shape, 0},
      {"2025-13", months, 5},
      {"2025-00", months, 5},
      {"2025-31-12", months, 5},
      {"2025-04-31", "April 2025 has days 01 to 30", 8},
      {"2025-04-00", "April 2025 has days 01 to 30", 8},
      {"2023-02-29", "February 2023 has days 01 to 28", 8},
      {"1900-02-29", "February 1900 has days 01 to 28", 8},
      {"2024-02-30", "February 2024 has days 01 to 29", 8},
      {"1884", years, 0},
      {"2200", years, 0},
      {"0000", years, 0},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto date = parse_date(c.text);
    ASSERT_FALSE(date.has_value());
    EXPECT_EQ(date.error().what, c.what);
    EXPECT_EQ(date.error().offset, c.offset);
  }
}

TEST(Date, CountsYearsFromMiddleToMiddle) {
  const auto year = [](std::string_view text) { return *parse_date(text); };
  EXPECT_NEAR(years_between(year("2021"), year("2025")), 4, 1e-12);
  EXPECT_NEAR(years_between(year("2021-07-02"), year("2025-07-02")), 4, 1e-12);
  EXPECT_NEAR(years_between(year("2025-04-12"), year("2025-04-12")), 0, 1e-12);
  EXPECT_LT(years_between(year("2025"), year("2021")), 0);
}

}  // namespace
}  // namespace tinworm::quantity
