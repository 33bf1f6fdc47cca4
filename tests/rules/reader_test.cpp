#include "rules/reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "bad_cases.hpp"

namespace tinworm::rules {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

RulesFile file_of(const std::string& yaml) {
  const Reading reading = read_rules(yaml);
  EXPECT_EQ(yaml::to_text(reading.problems, "rules.yaml", yaml), "");
  return reading.file.value();
}

TEST(RulesFile, ReadsTheExampleOfItsHeader) {
  const RulesFile file = file_of(
      "rules: 1                          # required: the format, always 1\n"
      "name: Stricter for salted roads   # optional\n"
      "near-radius: 400 mm\n"
      "repair-limit: 90 %\n"
      "rust.pitting.least: .60\n"
      "exponent: 8\n");
  EXPECT_EQ(file.name, "Stricter for salted roads");
  EXPECT_EQ(file.rules.near_radius_mm, 400);
  EXPECT_EQ(file.rules.repair_limit, .90);
  EXPECT_EQ(file.rules.of(survey::Rust::pitting).least, .60);
  EXPECT_EQ(file.rules.of(survey::Rust::pitting).likely, .85);
  EXPECT_EQ(file.rules.exponent, 8);
  EXPECT_THAT(changed(file.rules),
              ElementsAre("rust.pitting.least 60 % of the sheet (default 70 %)",
                          "repair-limit 90 % of the sheet (default 85 %)",
                          "near-radius 400 mm (default 300 mm)", "exponent 8 (default 6)"));
}

TEST(RulesFile, NeedsNothingButItsFormat) {
  const RulesFile file = file_of("rules: 1\n");
  EXPECT_EQ(file.name, "");
  EXPECT_THAT(changed(file.rules), IsEmpty());
}

// Several spellings of one value; the last three are the default.
TEST(RulesFile, TakesUnitsAsASurveyDoes) {
  const struct {
    const char* line;
    const char* change;
  } cases[] = {
      {"near-radius: 254", "near-radius 254 mm (default 300 mm)"},
      {"near-radius: 254 mm", "near-radius 254 mm (default 300 mm)"},
      {"near-radius: 25.4 cm", "near-radius 254 mm (default 300 mm)"},
      {"near-radius: 10 in", "near-radius 254 mm (default 300 mm)"},
      {"film-heavy: 800", "film-heavy 800 um (default 1000 um)"},
      {"film-heavy: .8 mm", "film-heavy 800 um (default 1000 um)"},
      {"too-thick: 130 %", "too-thick 130 % of the sheet (default 125 %)"},
      {"too-thick: 1.30", "too-thick 130 % of the sheet (default 125 %)"},
      {"scope-share: 40 %", "scope-share 40 % of the area (default 50 %)"},
      {"coverage-limit: 1", "coverage-limit 100 % of main area (default 80 %)"},
      {"near-radius: 30 cm", ""},
      {"scatter-limit: .03 cm", ""},
      {"pair-baseline: 5 %", ""},
  };
  for (const auto& each : cases) {
    const auto lines = changed(file_of(fmt::format("rules: 1\n{}\n", each.line)).rules);
    EXPECT_EQ(fmt::format("{}", fmt::join(lines, "; ")), each.change) << each.line;
  }
}

// Every constant can be set, at both its bounds, and one that is set to its default isn't changed.
TEST(RulesFile, SetsEveryConstantOfTheTable) {
  std::string defaults = "rules: 1\n";
  for (const Constant& each : constants()) {
    const Rules standard;
    const double was = value(standard, each);
    EXPECT_GE(was, each.low) << each.key;
    EXPECT_LE(was, each.high) << each.key;
    defaults += fmt::format("{}: {}\n", each.key, was);
    for (const double bound : {each.low, each.high}) {
      const std::string yaml = fmt::format("rules: 1\n{}: {}\n", each.key, bound);
      const Reading reading = read_rules(yaml);
      if (reading.file) {
        EXPECT_EQ(value(reading.file->rules, each), bound) << each.key;
      } else {  // then by an order alone
        EXPECT_NE(reading.problems.front().what.find(" must be "), std::string::npos)
            << reading.problems.front().what;
      }
    }
    for (const double beyond : {each.low - 1e-6, each.high + 1e-6}) {
      if (beyond < 0) continue;  // no sign is read at all
      const std::string yaml = fmt::format("rules: 1\n{}: {:.9f}\n", each.key, beyond);
      EXPECT_FALSE(read_rules(yaml).file) << yaml;
    }
  }
  EXPECT_THAT(changed(file_of(defaults).rules), IsEmpty());
}

TEST(RulesFile, KeepsEveryOrderByItself) {
  for (const Order& each : order()) {
    for (std::size_t i = 1; i < each.keys.size(); ++i) {
      const double low = value(Rules{}, constant(each.keys[i - 1]));
      const double high = value(Rules{}, constant(each.keys[i]));
      EXPECT_TRUE(each.strictly ? low < high : low <= high) << each.keys[i];
    }
  }
  // Eleven words, gives, breaks, dull, stuffed, the bad repair; two signs' caps; the three
  // distances to a mount; four bands of rates; five others.
  EXPECT_EQ(order().size(), 28u);
}

TEST(RulesFile, BadFiles) {
  const auto problems_of = [](std::string_view yaml) {
    const Reading reading = read_rules(yaml);
    EXPECT_FALSE(reading.file);
    return reading.problems;
  };
  expect_bad_files("shape-rules", 26, problems_of);
  expect_bad_files("meaning-rules", 13, problems_of);
}

}  // namespace
}  // namespace tinworm::rules
