#include <gtest/gtest.h>

#include <cctype>
#include <set>
#include <string>

#include "rules/rules.hpp"

namespace tinworm::rules {
namespace {

TEST(Constants, HaveAKeyAUnitBoundsAndAPlainDescription) {
  std::set<std::string> keys;
  for (const Constant& each : constants()) {
    EXPECT_TRUE(keys.insert(each.key).second) << each.key;
    for (const char c : each.key) EXPECT_TRUE(std::islower(c) || c == '-' || c == '.') << each.key;
    EXPECT_LT(each.low, each.high) << each.key;
    EXPECT_FALSE(each.what.empty()) << each.key;
    // What is published or common practice says where.
    EXPECT_TRUE(each.standing == Standing::memory || !each.source.empty()) << each.key;
  }
}

// One constant moved moves no other: each accessor reaches a member of its own.
TEST(Constants, AreEachTheirOwn) {
  for (const Constant& each : constants()) {
    Rules rules;
    each.of(rules) += 1;
    EXPECT_EQ(changed(rules).size(), 1u) << each.key;
  }
}

TEST(Constants, ChangesOfSomeKeysAlone) {
  Rules rules;
  rules.near_radius_mm = 250;
  rules.weak_limit = .55;
  constexpr std::string_view asked[] = {"weak-limit", "repair-limit"};
  EXPECT_EQ(changed(rules, asked),
            std::vector<std::string>{"weak-limit 55 % of the sheet (default 50 %)"});
}

TEST(Constants, AnUnknownKeyIsAMistakeOfOurs) {
  EXPECT_THROW(constant("near-raduis"), std::logic_error);
}

}  // namespace
}  // namespace tinworm::rules
