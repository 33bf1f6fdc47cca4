#include "metal/rates.hpp"

#include <array>
#include <cmath>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

constexpr std::array exponents{.523, .575};

TEST(Rates, ThickerLaterIsANegativeRate) {
  EXPECT_NEAR(loss_rate(1.0, .8, 4), .05, 1e-12);
  EXPECT_NEAR(loss_rate(.8, 1.0, 4), -.05, 1e-12);
}

TEST(Rates, TheGreaterGovernsAndTheLongOneWhereEqual) {
  EXPECT_TRUE(governing_rate(.01, .02).short_governs);
  EXPECT_EQ(governing_rate(.01, .02).rate, .02);
  EXPECT_FALSE(governing_rate(.02, .01).short_governs);
  EXPECT_EQ(governing_rate(.02, .01).rate, .02);
  EXPECT_FALSE(governing_rate(.02, .02).short_governs);
  EXPECT_EQ(governing_rate(-.02, -.03).rate, -.02);
}

TEST(Rates, NoLifeWithoutALoss) {
  EXPECT_FALSE(remaining_life(.9, .7, 0));
  EXPECT_FALSE(remaining_life(.9, .7, -.01));
  EXPECT_EQ(remaining_life(.7, .7, .01), 0);
  EXPECT_EQ(remaining_life(.6, .7, .01), 0);
  EXPECT_EQ(remaining_life(.6, .7, 0), 0) << "past the limit, whatever the rate";
}

TEST(Rates, PowerLawLifeReachesWhatIsAllowed) {
  // 50 years took .1 mm; the same law must take .15 mm by then.
  for (const double b : exponents) {
    const double life = power_law_life(.10, .15, 50, b);
    const double first_year = .10 / std::pow(50, b);
    EXPECT_NEAR(first_year * std::pow(50 + life, b), .15, 1e-12) << b;
  }
}

TEST(Rates, LifeSpansEveryMethod) {
  const RateRange rate{.004, .006, .010};
  const auto life = life_to_loss(.10, .15, rate, 50, exponents);
  ASSERT_TRUE(life);
  // Straight: 5 to 12.5 years. Power law: 50 (1.5^(1/.575) - 1) = 51.2 and 50 (1.5^(1/.523) - 1) =
  // 58.6: rust that slows lasts longer.
  EXPECT_NEAR(life->low_years, 5, 1e-12);
  EXPECT_NEAR(life->high_years.value(), power_law_life(.10, .15, 50, .523), 1e-12);
  EXPECT_NEAR(*life->high_years, 58.6, 0.05);

  const auto no_age = life_to_loss(.10, .15, rate, std::nullopt, exponents);
  ASSERT_TRUE(no_age);
  EXPECT_NEAR(no_age->low_years, 5, 1e-12);
  EXPECT_NEAR(no_age->high_years.value(), 12.5, 1e-12);
}

TEST(Rates, NoUpperEndWhereTheRateMayBeNothing) {
  for (const double low : {0.0, -.002}) {
    const auto life = life_to_loss(.10, .15, {low, .004, .010}, 50, exponents);
    ASSERT_TRUE(life) << low;
    EXPECT_NEAR(life->low_years, 5, 1e-12) << low;
    EXPECT_FALSE(life->high_years) << low;
  }
}

TEST(Rates, NoLossYetLeavesTheStraightLineAndNoUpperEnd) {
  const auto life = life_to_loss(0, .15, {.005, .006, .010}, 50, exponents);
  ASSERT_TRUE(life);
  EXPECT_NEAR(life->low_years, 15, 1e-12);
  EXPECT_FALSE(life->high_years);
}

TEST(Rates, NothingLeftToLose) {
  for (const double loss : {.15, .20}) {
    const auto life = life_to_loss(loss, .15, {-.01, 0, .01}, 50, exponents);
    ASSERT_TRUE(life) << loss;
    EXPECT_EQ(life->low_years, 0) << loss;
    EXPECT_EQ(life->high_years, 0) << loss;
  }
}

TEST(Rates, NoMethodNoFigure) {
  EXPECT_FALSE(life_to_loss(.10, .15, {-.01, -.005, 0}, std::nullopt, exponents));
  EXPECT_FALSE(life_to_loss(-.01, .15, {-.01, -.005, 0}, 50, exponents));
  // With an age the power law still speaks.
  const auto life = life_to_loss(.10, .15, {-.01, -.005, 0}, 50, exponents);
  ASSERT_TRUE(life);
  EXPECT_NEAR(life->low_years, power_law_life(.10, .15, 50, .575), 1e-12);
  EXPECT_FALSE(life->high_years);
}

}  // namespace
}  // namespace tinworm::metal
