// A picture by changed rules says so, with each of them, and draws by them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

#include "scene/fixture.hpp"

namespace tinworm::scene {
namespace {

using testing::HasSubstr;
using testing::Not;

weighing::Result by(const rules::Rules& rules) {
  weighing::Result result = weighing::weigh(fixture::busy_survey(fixture::plan()), rules);
  result.rules = "strict.yaml";
  result.rules_name = "Stricter";
  return result;
}

// All text of a page in one line: blocks are wrapped, at hyphens too.
std::string run_on(const Page& page) {
  std::string all;
  for (const Text* text : texts(page)) all += text->text + (text->text.ends_with('-') ? "" : " ");
  return all;
}

rules::Rules with_all_changed() {
  rules::Rules rules;
  for (const rules::Constant& each : rules::constants()) {
    double& now = each.of(rules);
    now += now < each.high ? 1e-4 * (each.high - now) : -1e-4;
  }
  return rules;
}

TEST(ChangedRules, AreNotSpokenOfWhereThereAreNone) {
  const auto result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  EXPECT_THAT(fixture::all_said(fixture::drawn(result)), Not(HasSubstr("Rules changed")));
  EXPECT_THAT(picture_description(result), Not(HasSubstr("Rules changed")));
}

TEST(ChangedRules, StandInFullOnEverySheet) {
  rules::Rules rules;
  rules.near_radius_mm = 250;
  rules.repair_limit = .9;
  const auto result = by(rules);
  DiagramOptions options;
  options.circles = true;
  const auto pages = fixture::drawn(result, options);
  ASSERT_GE(pages.size(), 2u);
  const std::string says =
      "Rules changed (strict.yaml, Stricter): repair-limit 90 % of the sheet (default 85 %); "
      "near-radius 250 mm (default 300 mm).";
  for (std::size_t i = 0; i < 2; ++i) EXPECT_THAT(run_on(pages[i]), HasSubstr(says));
  EXPECT_THAT(run_on(pages[0]), HasSubstr("25 cm round what carries brakes"));
  EXPECT_THAT(picture_description(result), HasSubstr(says));
}

// Nothing is cut in silence: the sheet counts them and names a page, which has every one.
TEST(ChangedRules, RunOnToAPageWhereTheyAreMany) {
  const auto result = by(with_all_changed());
  const std::size_t count = rules::constants().size();
  ASSERT_EQ(result.rules_changed.size(), count);
  for (const Paper paper : {Paper::a4, Paper::letter, Paper::a3}) {
    DiagramOptions options;
    options.paper = paper;
    const auto pages = fixture::drawn(result, options);
    ASSERT_GE(pages.size(), 3u);
    const std::string sheet = run_on(pages[0]);
    EXPECT_THAT(sheet, HasSubstr(fmt::format("Rules changed, {} in all: prior-scatter, ", count)));
    EXPECT_THAT(sheet, HasSubstr(" more; the values are on page 3."));
    std::string rest;
    for (std::size_t i = 2; i < pages.size(); ++i) rest += run_on(pages[i]);
    for (const std::string& change : result.rules_changed) EXPECT_THAT(rest, HasSubstr(change));
    EXPECT_THAT(rest, HasSubstr("Rules changed (strict.yaml): Stricter"));
    EXPECT_THAT(rest, HasSubstr("Not seen, so not known"));
  }
}

TEST(ChangedRules, ChangeTheWordsOfTheKey) {
  rules::Rules rules;
  rules.weak_limit = .6;
  EXPECT_THAT(run_on(fixture::drawn(by(rules))[0]), HasSubstr("weak: 40 % gone or more, or gives"));
}

}  // namespace
}  // namespace tinworm::scene
