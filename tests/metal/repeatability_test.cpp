#include "metal/repeatability.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(Repeatability, DescribesReadings) {
  const std::vector<double> readings{.81, .78, .84, .80};
  EXPECT_NEAR(mean(readings), 0.8075, 1e-12);
  EXPECT_EQ(least(readings), .78);
  EXPECT_EQ(greatest(readings), .84);
  EXPECT_NEAR(spread(readings), 0.06, 1e-12);
  // Squares about .8075: 6.25e-6 + 7.5625e-4 + 1.05625e-3 + 5.625e-5 = 1.875e-3, over 3.
  EXPECT_NEAR(standard_deviation(readings).value(), 0.025, 1e-12);
}

TEST(Repeatability, OneReadingHasNoScatterOfItsOwn) {
  EXPECT_FALSE(standard_deviation(std::vector<double>{1.0}));
  EXPECT_FALSE(standard_deviation({}));
}

TEST(Repeatability, PriorAloneWithoutRepeats) {
  for (const auto& sets : std::vector<std::vector<std::vector<double>>>{{}, {{}}, {{1.0}, {0.7}}}) {
    const Repeatability r = pooled(sets, Prior{});
    EXPECT_NEAR(r.standard_mm, 0.04, 1e-15);
    EXPECT_EQ(r.degrees_of_freedom, 5);
  }
}

TEST(Repeatability, PoolsEverySetWithThePrior) {
  // (5 x 0.0016 + 3 x 0.000625 + 2 x 0.0001) / (5 + 3 + 2) = 0.0010075
  const Repeatability r = pooled({{.81, .78, .84, .80}, {1.02, 1.00, 1.01}}, Prior{});
  EXPECT_NEAR(r.standard_mm, std::sqrt(0.0010075), 1e-12);
  EXPECT_EQ(r.degrees_of_freedom, 10);
}

TEST(Repeatability, OrderDoesNotMatter) {
  const Repeatability a = pooled({{.81, .78, .84}, {1.02, 1.00}}, Prior{});
  const Repeatability b = pooled({{1.00, 1.02}, {.84, .81, .78}}, Prior{});
  EXPECT_NEAR(a.standard_mm, b.standard_mm, 1e-12);
  EXPECT_EQ(a.degrees_of_freedom, b.degrees_of_freedom);
}

TEST(Repeatability, WideSetsStayOut) {
  struct Case {
    std::vector<double> readings;
    bool wide;
  };
  for (const Case& c : std::vector<Case>{{{}, false},
                                         {{.9}, false},
                                         {{.60, .90}, false},   // just the limit
                                         {{.65, .95}, false},   // the same in binary: .29999…
                                         {{1.15, .85}, false},  // and .30000000000000004
                                         {{.60, .9001}, true},
                                         {{.60, .75, 1.2}, true}}) {
    EXPECT_EQ(too_wide(c.readings, Prior{}), c.wide) << testing::PrintToString(c.readings);
  }
}

TEST(Repeatability, WideSetCountsItsOwnScatterWithThePriorAlone) {
  const Prior prior;
  const std::vector<double> wide{.60, 1.00}, narrow{.80, .82};
  const Repeatability survey = pooled({wide, narrow}, prior);
  EXPECT_EQ(survey.degrees_of_freedom, 6) << "the wide set stayed out";
  EXPECT_NEAR(survey.standard_mm, std::sqrt((5 * 0.0016 + 0.0002) / 6), 1e-12);

  const Repeatability own = repeatability_of(wide, survey, prior);
  EXPECT_EQ(own.degrees_of_freedom, 6);
  EXPECT_NEAR(own.standard_mm, std::sqrt((5 * 0.0016 + 0.08) / 6), 1e-12);

  const Repeatability common = repeatability_of(narrow, survey, prior);
  EXPECT_EQ(common.standard_mm, survey.standard_mm);
  EXPECT_EQ(common.degrees_of_freedom, survey.degrees_of_freedom);
}

TEST(Repeatability, PriorIsTheCallersToSet) {
  const Prior prior{.standard_mm = 0.1, .degrees_of_freedom = 2, .spread_limit_mm = 0.05};
  EXPECT_TRUE(too_wide(std::vector<double>{.80, .86}, prior));
  const Repeatability r = pooled({{.80, .84}}, prior);
  EXPECT_NEAR(r.standard_mm, std::sqrt((2 * 0.01 + 0.0008) / 3), 1e-12);
  EXPECT_EQ(r.degrees_of_freedom, 3);
}

TEST(Repeatability, ReadingEqualToTheMeanNeverWidens) {
  const std::vector<double> readings{.81, .78, .84};
  std::vector<double> more = readings;
  more.push_back(mean(readings));
  const Repeatability before = pooled({readings}, Prior{}), after = pooled({more}, Prior{});
  EXPECT_LT(after.standard_mm, before.standard_mm);
  EXPECT_GT(after.degrees_of_freedom, before.degrees_of_freedom);
}

}  // namespace
}  // namespace tinworm::metal
