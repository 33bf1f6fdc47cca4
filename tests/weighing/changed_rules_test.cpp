// What changed rules do to a result, and that it says so.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/verdict.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(ChangedRules, AreNamedInAResult) {
  Result result;
  EXPECT_EQ(rules_text(result), "");
  result.rules_changed = {"near-radius 250 mm (default 300 mm)"};
  EXPECT_EQ(rules_text(result), "Rules changed: near-radius 250 mm (default 300 mm).");
  result.rules = "strict.yaml";
  EXPECT_EQ(rules_text(result),
            "Rules changed (strict.yaml): near-radius 250 mm (default 300 mm).");
  result.rules_name = "Stricter";
  result.rules_changed.push_back("exponent 8 (default 6)");
  EXPECT_EQ(
      rules_text(result),
      "Rules changed (strict.yaml, Stricter): near-radius 250 mm (default 300 mm); exponent 8 "
      "(default 6).");
}

// The published source goes on standing where it was left, and only there does it stand alone.
TEST(ChangedRules, StandBesideTheSourceOfTheRuleTheyChange) {
  const struct {
    const char* rule;
    double rules::Rules::*constant;
    double value;
    const char* says;
  } cases[] = {
      {"on-mount", &rules::Rules::near_radius_mm, 250, "near-radius 250 mm (default 300 mm)"},
      {"on-mount", &rules::Rules::on_mm, 80, "on-mount 80 mm (default 100 mm)"},
      {"into-mount", &rules::Rules::into_mm, 150, "into-mount 150 mm (default 200 mm)"},
      {"repair-on-mount", &rules::Rules::near_radius_mm, 250,
       "near-radius 250 mm (default 300 mm)"},
      {"may-be-near", &rules::Rules::near_radius_mm, 250, "near-radius 250 mm (default 300 mm)"},
      {"past-limit", &rules::Rules::repair_limit, .9, "repair-limit 90 % of the sheet"},
      {"weak", &rules::Rules::weak_limit, .6, "weak-limit 60 % of the sheet"},
      {"coverage", &rules::Rules::coverage_limit, .9, "coverage-limit 90 % of main area"},
      {"nothing-found", &rules::Rules::coverage_limit, .9, "coverage-limit 90 % of main area"},
      {"judged-by-eye", &rules::Rules::repair_limit, .9, "repair-limit 90 % of the sheet"},
      {"thick-coat", &rules::Rules::film_heavy_um, 900, "film-heavy 900 um"},
      {"too-thick", &rules::Rules::too_thick, 1.2, "too-thick 120 % of the sheet"},
  };
  for (const auto& each : cases) {
    rules::Rules rules;
    const std::string before = rule_source(each.rule, rules);
    rules.exponent = 8;
    EXPECT_EQ(rule_source(each.rule, rules), before) << each.rule;
    rules.*each.constant = each.value;
    EXPECT_THAT(rule_source(each.rule, rules),
                testing::StartsWith(before + "; here by changed rules: " + each.says));
  }
  rules::Rules all;
  for (const rules::Constant& each : rules::constants()) each.of(all) += 1e-4;
  EXPECT_THAT(rule_source("skin-holed", all), Not(HasSubstr("changed")));
}

}  // namespace
}  // namespace tinworm::weighing
