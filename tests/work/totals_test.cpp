// PERT against sums done by hand; z of 80 % by SciPy 1.10 norm.ppf(.8) = 0.8416212335729143.
#include "work/totals.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace tinworm::work {
namespace {

// 1, 2, 3: mean 12/6 = 2, s = 1/3. 2, 4, 12: mean 30/6 = 5, s = 5/3. Mean 7; sum of s 2, of s^2
// 1/9 + 25/9 = 26/9. Alone: s = sqrt(26/9) = 1.699673; together: 2; half and half: variance 13/9 +
// 2 = 31/9, s = 1.855921; 7 + .841621 s = 8.430481, 8.683242, 8.561983.
TEST(Totals, AreThoseOfPert) {
  const std::vector<Range> tasks = {{1, 2, 3}, {2, 4, 12}};
  const struct {
    double correlation, deviation, in_80;
  } cases[] = {{0, 1.6996731712, 8.4304810}, {1, 2, 8.6832425}, {.5, 1.8559214543, 8.5619829}};
  for (const auto& each : cases) {
    const Total made = total(tasks, each.correlation);
    EXPECT_EQ(made.sum, (Range{3, 6, 15}));
    EXPECT_NEAR(made.mean, 7, 1e-12);
    EXPECT_NEAR(made.standard_deviation, each.deviation, 1e-9) << each.correlation;
    EXPECT_NEAR(made.in_80_of_100, each.in_80, 1e-6) << each.correlation;
  }
}

TEST(Totals, OfNothingAreNothing) {
  const Total made = total({}, .5);
  EXPECT_EQ(made.sum, Range{});
  EXPECT_EQ(made.mean, 0);
  EXPECT_EQ(made.in_80_of_100, 0);
}

// n alike and independent tasks grow with the root of n, wholly dependent ones with n.
TEST(Totals, GrowWithTheRootOfIndependentTasks) {
  const std::vector<Range> tasks(16, Range{0, 3, 6});
  EXPECT_NEAR(total(tasks, 0).standard_deviation, 4, 1e-12);
  EXPECT_NEAR(total(tasks, 1).standard_deviation, 16, 1e-12);
}

}  // namespace
}  // namespace tinworm::work
