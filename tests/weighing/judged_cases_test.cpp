#include "weighing/judged_cases.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "body/built_in.hpp"
#include "body/reader.hpp"
#include "survey/reader.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

body::PlanPtr saloon() {
  for (const body::BuiltIn& each : body::built_in_plans())
    if (each.name == "two-door-saloon")
      return std::make_shared<const body::Plan>(*body::read_plan(each.yaml).plan);
  return nullptr;
}

std::string survey_text(const JudgedCase& of, const body::Plan& plan) {
  const std::string all_bare =
      "  bare: 14 16 20-23 26-28 45-86\n  coated: 10-13 15 17-19 24-25 29-31 41-44 87-98\n";
  std::string text = fmt::format(
      "survey: 1\nbody: two-door-saloon 1\ncar: {{name: Wherry 1200, built: 1967}}\n"
      "visit: {{date: 2025-04-12, reason: purchase, interest: none}}\n"
      "gauges:\n  metal: {{uncertainty: 0.03 mm, coating: removed}}\n{}seen:\n{}zones:\n{}",
      of.gaps, std::string(of.seen).empty() ? all_bare : of.seen, of.zones);
  const std::string written = std::string("\n") + of.zones;
  const std::string seen = of.seen;
  for (const body::Zone& zone : plan.zones) {
    const bool has_inside = zone.build == body::Build::box || zone.build == body::Build::layered;
    const bool is_skin = zone.role == body::Role::skin;
    // Of the survey whose floor is under carpet, those parts have no entry.
    const bool hidden =
        seen.find("hidden") != seen.npos &&
        (zone.number == 55 || zone.number == 56 || (zone.number >= 65 && zone.number <= 70));
    if (has_inside && !is_skin && !hidden &&
        written.find(fmt::format("\n  {}:", zone.number)) == written.npos)
      text += fmt::format("  {}: {{inside: scoped}}\n", zone.number);
  }
  return text;
}

void expect_judged(const JudgedCase& of, const body::PlanPtr& plan) {
  SCOPED_TRACE(fmt::format("{}: {}", of.name, of.why));
  const std::string text = survey_text(of, *plan);
  const survey::Reading reading = survey::read_survey(text, [&](std::string_view) { return plan; });
  ASSERT_TRUE(reading.survey) << yaml::to_text(reading.problems, "case", text);
  const Result result = weigh(*reading.survey, {});
  EXPECT_EQ(word(result.verdict), word(of.verdict));
  EXPECT_EQ(word(result.could_be), word(of.could_be));
  std::vector<int> first;
  for (const Spot* spot : result.ranked())
    if (first.size() < of.first.size()) first.push_back(spot->zone);
  std::vector<int> wanted = of.first;
  if (of.any_order) {
    std::ranges::sort(first);
    std::ranges::sort(wanted);
  }
  EXPECT_EQ(first, wanted);
}

TEST(JudgedCases, APractitionersTwenty) {
  const body::PlanPtr plan = saloon();
  for (const JudgedCase& each : cases_of_a_practitioner()) expect_judged(each, plan);
  EXPECT_EQ(cases_of_a_practitioner().size(), 20u);
}

TEST(JudgedCases, FortyOfOurOwn) {
  const body::PlanPtr plan = saloon();
  for (const JudgedCase& each : cases_of_our_own()) expect_judged(each, plan);
  EXPECT_EQ(cases_of_our_own().size(), 40u);
}

TEST(JudgedCases, AWeldersTwelve) {
  const body::PlanPtr plan = saloon();
  for (const JudgedCase& each : cases_of_a_welder()) expect_judged(each, plan);
  EXPECT_EQ(cases_of_a_welder().size(), 12u);
}

}  // namespace
}  // namespace tinworm::weighing
