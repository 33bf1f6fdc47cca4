// Surveys of the small body of tests/weighing/fixture.hpp, written as in a file, side by side.
#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "history/compare.hpp"
#include "survey/reader.hpp"
#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"
#include "yaml/problem.hpp"

namespace tinworm::history::fixture {

inline survey::Survey survey_of(const std::string& text, const body::PlanPtr& plan) {
  survey::Reading reading = survey::read_survey(
      text, [&](std::string_view) -> tl::expected<body::PlanPtr, yaml::Problem> { return plan; });
  if (!reading.survey || !reading.problems.empty())
    throw std::runtime_error(yaml::to_text(reading.problems, "survey", text));
  return *reading.survey;
}

inline body::PlanPtr small_plan() {
  static const body::PlanPtr plan = std::make_shared<const body::Plan>(weighing::fixture::plan());
  return plan;
}

// The visit's date, what stands under `car`, and the rest of the file from `seen:` on.
struct Told {
  std::string date;
  std::string rest;
  std::string car = "name: Wherry";
  std::string gauge = "name: thin probe, uncertainty: 0.05 mm";
};

inline weighing::Result result_of(const Told& told, const rules::Rules& rules = {},
                                  const body::PlanPtr& plan = small_plan()) {
  const std::string text = fmt::format(
      "survey: 1\nbody: test-body 1\ncar: {{{}}}\nvisit: {{date: {}}}\n"
      "gauges: {{metal: {{{}, coating: removed}}}}\n{}",
      told.car, told.date, told.gauge, told.rest);
  weighing::Result result = weighing::weigh(survey_of(text, plan), rules);
  result.file = result.named = told.date + ".yaml";
  result.sha256 = "of " + text;
  return result;
}

inline Comparison compared(const std::vector<Told>& all, const rules::Rules& rules = {}) {
  std::vector<weighing::Result> results;
  for (const Told& each : all) results.push_back(result_of(each, rules));
  return compare(std::move(results), rules);
}

// Lines of a zone, one finding or repair each.
inline std::string listed(const std::string& key, const std::vector<std::string>& lines) {
  std::string text = key + ":\n";
  for (const std::string& line : lines) text += "      - " + line + "\n";
  return text + "    ";
}
inline std::string found(const std::vector<std::string>& lines) {
  return listed("found", lines);
}
inline std::string repairs(const std::vector<std::string>& lines) {
  return listed("repairs", lines);
}

// Everything seen, and this in zone 51, indented by four: "found: [...]".
inline std::string in_sill(const std::string& lines,
                           const std::string& seen = "bare: 11 41 51 52 61 62 71") {
  if (lines.empty()) return fmt::format("seen: {{{}}}\n", seen);
  return fmt::format("seen: {{{}}}\nzones:\n  51:\n    {}\n", seen, lines);
}

inline const Zone& zone(const Comparison& comparison, int number) {
  for (const Zone& each : comparison.zones)
    if (each.number == number) return each;
  throw std::runtime_error("no such zone");
}

inline const Place& place(const Comparison& comparison, const std::string& name) {
  for (const Zone& each : comparison.zones)
    for (const Place& spot : each.places)
      if (spot.name == name) return spot;
  throw std::runtime_error("no place " + name);
}

}  // namespace tinworm::history::fixture
