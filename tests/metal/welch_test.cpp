#include "metal/welch.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(WelchTest, NoneWithoutScatterOrReadings) {
  EXPECT_FALSE(welch({1, .8, 0}, {5, .9, .04}));
  EXPECT_FALSE(welch({5, .9, .04}, {1, .8, 0}));
  EXPECT_FALSE(welch({3, .8, 0}, {3, .9, 0}));
  EXPECT_TRUE(welch({3, .8, 0}, {3, .9, .04}));
}

// Equal sizes and scatters make it Student's own test with n1 + n2 - 2.
TEST(WelchTest, EqualScattersGiveStudentsTest) {
  const Welch w = welch({6, .80, .04}, {6, .90, .04}).value();
  EXPECT_NEAR(w.degrees_of_freedom, 10, 1e-9);
  EXPECT_NEAR(w.t, -.10 / (.04 * std::sqrt(1.0 / 3)), 1e-12);
}

TEST(WelchTest, TurnedRoundChangesTheSignAlone) {
  const Sample a{4, .80, .05}, b{7, .86, .02};
  const Welch ab = welch(a, b).value(), ba = welch(b, a).value();
  EXPECT_NEAR(ab.t, -ba.t, 1e-12);
  EXPECT_NEAR(ab.two_sided, ba.two_sided, 1e-12);
  EXPECT_NEAR(ab.difference.low, -ba.difference.high, 1e-12);
}

// 0 stands in the interval exactly where the probability is over 5 %.
TEST(WelchTest, IntervalAndProbabilityAgree) {
  for (double second = .80; second < .95; second += .005) {
    const Welch w = welch({5, .80, .04}, {5, second, .03}).value();
    EXPECT_EQ(w.difference.low <= 0 && 0 <= w.difference.high, w.two_sided >= .05) << second;
  }
}

}  // namespace
}  // namespace tinworm::metal
