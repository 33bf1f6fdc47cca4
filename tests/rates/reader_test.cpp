#include "rates/reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "bad_cases.hpp"

namespace tinworm::rates {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

RatesFile file_of(const std::string& yaml) {
  const Reading reading = read_rates(yaml);
  EXPECT_EQ(yaml::to_text(reading.problems, "rates.yaml", yaml), "");
  return reading.file.value();
}

TEST(RatesFile, ReadsTheExampleOfItsHeader) {
  const RatesFile file = file_of(
      "rates: 1                   # required: the format, always 1\n"
      "name: The island workshop  # optional\n"
      "currency: EUR\n"
      "hour: 72\n"
      "sheet: 6 per kg\n"
      "weld-speed: .2 .3 .4 m/h\n"
      "outer-sill: 10 14 20\n"
      "consumables: 8 10 15 %\n");
  EXPECT_EQ(file.name, "The island workshop");
  EXPECT_EQ(file.rates.hour, 72);
  EXPECT_EQ(file.rates.weld_speed, (Range{.2, .3, .4}));
  EXPECT_EQ(file.rates.of(Job::outer_sill), (Range{10, 14, 20}));
  EXPECT_THAT(changed(file.rates),
              ElementsAre("hour 72 EUR per hour (default 65)", "sheet 6 EUR per kg (default 5)",
                          "consumables 8–10–15 % (default 8–11.5–15)",
                          "weld-speed 0.2–0.3–0.4 m/h (default 0.15–0.25–0.4)",
                          "outer-sill 10–14–20 h (default 8–12–16)"));
}

TEST(RatesFile, NeedsNothingButItsFormat) {
  const RatesFile file = file_of("rates: 1\n");
  EXPECT_EQ(file.name, "");
  EXPECT_THAT(changed(file.rates), IsEmpty());
}

TEST(RatesFile, TakesUnitsAndSingleFigures) {
  const struct {
    const char* lines;
    const char* change;
  } cases[] = {
      {"hour: 80 EUR", "hour 80 EUR per hour (default 65)"},
      {"hour: 80 EUR per hour", "hour 80 EUR per hour (default 65)"},
      {"outer-sill: 12 h", "outer-sill 12–12–12 h (default 8–12–16)"},
      {"margin: 1 2 3 in", "margin 25.4–50.8–76.2 mm (default 25–35–50)"},
      {"margin: 2.5 3.5 5 cm", ""},
      {"join: 4 in", "join 101.6 mm (default 100)"},
      {"cutting-allowance: 40 %", "cutting-allowance 40 % (default 25)"},
      {"cutting-allowance: .4", "cutting-allowance 40 % (default 25)"},
      {"hidden-bare: 1.2", "hidden-bare 1.2 (default 1.15)"},
      {"currency: EUR", ""},
      {"currency: GBP\nhour: 65\nsheet: 5", "currency GBP (default EUR)"},
      {"hour: 65", ""},
  };
  for (const auto& each : cases) {
    const auto lines = changed(file_of(fmt::format("rates: 1\n{}\n", each.lines)).rates);
    EXPECT_EQ(fmt::format("{}", fmt::join(lines, "; ")), each.change) << each.lines;
  }
}

TEST(RatesFile, BadFiles) {
  expect_bad_files("rates", 23, [](std::string_view yaml) {
    const Reading reading = read_rates(yaml);
    EXPECT_FALSE(reading.file);
    return reading.problems;
  });
}

}  // namespace
}  // namespace tinworm::rates
