// Checks against values published elsewhere, kept as a table that is printed when the run ends:
//
//   expect_published("ASTM D610-08 (2012) Table 1", "0.03 %", 9, grade, 0);
//
// Put how sure the figure is into the source where it wasn't read in the source itself: "quoted",
// "worked", "common practice" or "memory".
#pragma once

#include <cmath>
#include <optional>
#include <source_location>
#include <string>
#include <vector>

#include <fmt/core.h>
#include <gtest/gtest.h>

namespace tinworm::outside {

struct Check {
  std::string source;    // title, year, page, table or clause
  std::string inputs;    // what was put in
  double published = 0;  // what the source says
  double ours = 0;       // what we get
  double tolerance = 0;  // greatest difference, in the unit of the figure
  bool holds = false;
};

// Owned by GoogleTest; prints the checks of this run, in the order they were made.
class Record : public testing::Environment {
 public:
  void TearDown() override {
    if (checks.empty()) return;
    fmt::print("\n{:<62} {:<46} {:>18} {:>18} {:>9}\n", "source", "inputs", "published", "ours",
               "tolerance");
    for (const Check& c : checks) {
      fmt::print("{:<62} {:<46} {:>18.12g} {:>18.12g} {:>9.2g}{}\n", c.source, c.inputs,
                 c.published, c.ours, c.tolerance, c.holds ? "" : "  DIFFERS");
    }
    fmt::print("{} published values checked\n", checks.size());
  }
  std::vector<Check> checks;
};

inline Record& record() {
  static Record* const record = [] {
    auto* const made = new Record;
    testing::AddGlobalTestEnvironment(made);
    return made;
  }();
  return *record;
}
inline const bool record_is_registered = (record(), true);  // before the run starts

// Fails unless ours is within `tolerance` of the published figure; 0 asks for the same number.
inline void expect_published(const std::string& source, const std::string& inputs, double published,
                             double ours, double tolerance,
                             std::source_location at = std::source_location::current()) {
  const bool holds = std::abs(ours - published) <= tolerance;  // false for NaN
  record().checks.push_back({source, inputs, published, ours, tolerance, holds});
  EXPECT_TRUE(holds) << at.file_name() << ':' << at.line() << ": " << source << ", " << inputs
                     << ": published " << published << ", ours " << ours << ", tolerance "
                     << tolerance;
}

// The same where ours may be missing.
inline void expect_published(const std::string& source, const std::string& inputs, double published,
                             const std::optional<double>& ours, double tolerance,
                             std::source_location at = std::source_location::current()) {
  expect_published(source, inputs, published, ours ? *ours : std::nan(""), tolerance, at);
}

}  // namespace tinworm::outside
