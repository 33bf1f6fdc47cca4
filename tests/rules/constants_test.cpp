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

// Those that come from outside stand at the figures of their sources.
TEST(Constants, StandAtTheFiguresOfTheirSources) {
  const struct {
    const char* key;
    double value;
    const char* source;
  } cases[] = {
      {"near-radius", 300, "UK MOT inspection manual, cars, Appendix A section 2: 30 cm"},
      {"repair-limit", .85, "US Army TB 9-2510-242-40, frame members: up to 15 % loss tolerated"},
      {"pit-limit", .70, "IMO 2011 ESP Code, Annex A Part B 8.2.1.3: 70 % to remain"},
      {"echo-factor", 2.3, "ratio of sound speeds in steel and paint (gauge application notes)"},
      {"pair-baseline", .05, "EN 10131:2006 Table 1: .05 of 1.00 mm"},
      {"survey-sheet", .10, "common practice"},
      {"plan-sheet", .20, "common practice"},
      {"film-factory", 200, "common practice: factory paint 90 to 180 um"},
      {"film-repainted", 500, "common practice: repaint 200 to 500 um"},
      {"film-heavy", 1000, "common practice: over about 1000 um filler"},
      {"echo-film-limit", 500, "common practice: over that no paint"},
      {"too-thick", 1.25, "common practice: a plate or a double skin"},
      {"ask.readings", 5, "common practice: 10 to 14 stations a side"},
      {"ask.film-patch", 3, "common practice: filler in a small part of a panel"},
      {"next-dry-season", 24, "common practice: driven in the dry season, every second year"},
      {"next-all-weather", 12, "common practice: all weathers, 6 to 12 months"},
      {"next-salted", 6, "common practice: winters, 6 to 12 months"},
      {"gap-moves", 3, "common practice: a shell that bends has lost its sill"},
      {"ask.gap", 2, "common practice: a few mm tell of a weak middle"},
  };
  std::size_t outside = 0;
  for (const Constant& each : constants()) outside += each.standing != Standing::memory;
  EXPECT_EQ(outside, std::size(cases));
  for (const auto& each : cases) {
    EXPECT_EQ(value(Rules{}, constant(each.key)), each.value) << each.key << ": " << each.source;
    EXPECT_NE(constant(each.key).standing, Standing::memory) << each.key;
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
