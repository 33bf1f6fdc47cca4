#include "quantity/tyre.hpp"

#include <gtest/gtest.h>

namespace tinworm::quantity {
namespace {

// 49 CFR 574.5 and 64 FR 36807: week then year on tyres from 2000. "0301" is week 3 of 2001, "3500"
// week 35 of 2000; three digits leave the decade open.
TEST(Tyre, ReadsDateCodes) {
  struct {
    std::string code, text;
    TyreDate made;
  } const cases[] = {
      {"0301", "week 3 of 2001", {3, 2001, 1}},
      {"3500", "week 35 of 2000", {35, 2000, 0}},
      {"5319", "week 53 of 2019", {53, 2019, 9}},
      {"0124", "week 1 of 2024", {1, 2024, 4}},
      {"317", "week 31 of a year ending in 7, before 2000", {31, std::nullopt, 7}},
      {"019", "week 1 of a year ending in 9, before 2000", {1, std::nullopt, 9}},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.code);
    const auto made = parse_tyre_code(c.code);
    ASSERT_TRUE(made.has_value()) << made.error().what;
    EXPECT_EQ(*made, c.made);
    EXPECT_EQ(made->text(), c.text);
  }
}

TEST(Tyre, RefusesWhatNoTyreCarries) {
  const std::string digits = "a tyre date code is the last three or four digits on the tyre's wall";
  const std::string weeks = "a tyre date code starts with its week, 01 to 53";
  struct {
    std::string code, what;
  } const cases[] = {{"", digits},      {"31", digits},   {"03015", digits}, {"DOT 0301", digits},
                     {"03 01", digits}, {"030x", digits}, {"-301", digits},  {"0001", weeks},
                     {"5401", weeks},   {"9901", weeks},  {"007", weeks},    {"547", weeks}};
  for (const auto& c : cases) {
    SCOPED_TRACE(c.code);
    const auto made = parse_tyre_code(c.code);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().what, c.what);
  }
}

TEST(Tyre, HasAnAgeOnlyWithItsDecade) {
  const PartialDate day{2025, 4, 12};
  EXPECT_NEAR(*age_years(*parse_tyre_code("0301"), day), 24.23, 0.01);
  EXPECT_NEAR(*age_years(*parse_tyre_code("1525"), day), 0, 0.02);
  EXPECT_LT(*age_years(*parse_tyre_code("4025"), day), 0);
  EXPECT_FALSE(age_years(*parse_tyre_code("317"), day));
}

}  // namespace
}  // namespace tinworm::quantity
