#include "metal/echo.hpp"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(Echo, SubtractsTheCoatingAsTheGaugeReadsIt) {
  // s² = (2 x 30² + 2 x 10²) / 4, pooled with 20 % of the median; the place itself differs too.
  const auto c = echo_correction(std::vector<double>{140, 150, 160});
  ASSERT_TRUE(c);
  EXPECT_NEAR(c->subtract_mm, 2.3 * .150, 1e-12);
  EXPECT_NEAR(c->standard_mm, 2.3e-3 * std::sqrt(500) * std::sqrt(1 + 1 / 3.0), 1e-12);
  EXPECT_EQ(c->degrees_of_freedom, 4);
}

TEST(Echo, OneReadingHasTheScatterOfThePrior) {
  const auto one = echo_correction(std::vector<double>{150});
  ASSERT_TRUE(one);
  EXPECT_NEAR(one->standard_mm, 2.3e-3 * 30 * std::sqrt(2), 1e-12);
  EXPECT_EQ(one->degrees_of_freedom, 2);
}

TEST(Echo, ReadingsThatScatterCountMoreThanThePrior) {
  // s² = (2 x 30² + 2 x 50²) / 4
  const auto c = echo_correction(std::vector<double>{100, 150, 200});
  ASSERT_TRUE(c);
  EXPECT_NEAR(c->standard_mm, 2.3e-3 * std::sqrt(1700) * std::sqrt(4 / 3.0), 1e-12);
}

TEST(Echo, NoCorrectionWithoutFilmOrWhereItIsNoPaint) {
  EXPECT_FALSE(echo_correction({}));
  EXPECT_TRUE(echo_correction(std::vector<double>{500}));
  EXPECT_FALSE(echo_correction(std::vector<double>{500.1}));
  EXPECT_TRUE(echo_correction(std::vector<double>{140, 155, 900})) << "the median counts";
}

TEST(Echo, RuleIsTheCallersToSet) {
  const std::vector<double> film_um{600};
  const auto c = echo_correction(
      film_um, {.times_film = 2, .prior_share = .1, .prior_degrees = 3, .paint_limit_um = 700});
  ASSERT_TRUE(c);
  EXPECT_NEAR(c->subtract_mm, 1.2, 1e-12);
  EXPECT_NEAR(c->standard_mm, .12 * std::sqrt(2), 1e-12);
  EXPECT_EQ(c->degrees_of_freedom, 3);
}

}  // namespace
}  // namespace tinworm::metal
