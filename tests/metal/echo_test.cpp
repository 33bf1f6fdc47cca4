#include "metal/echo.hpp"

#include <vector>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(Echo, SubtractsTheCoatingAsTheGaugeReadsIt) {
  const auto c = echo_correction(std::vector<double>{140, 150, 160});
  ASSERT_TRUE(c);
  EXPECT_NEAR(c->subtract_mm, 2.3 * .150, 1e-12);
  EXPECT_NEAR(c->standard_mm, 2.3 * .015, 1e-12) << "10 % of the median, over the scatter of 10";
}

TEST(Echo, UncertaintyIsTheGreaterOfScatterAndShare) {
  const auto c = echo_correction(std::vector<double>{100, 150, 200});
  ASSERT_TRUE(c);
  EXPECT_NEAR(c->standard_mm, 2.3 * .050, 1e-12);
  const auto one = echo_correction(std::vector<double>{150});
  ASSERT_TRUE(one);
  EXPECT_NEAR(one->standard_mm, 2.3 * .015, 1e-12) << "one reading has no scatter";
}

TEST(Echo, NoCorrectionWithoutFilmOrWhereItIsNoPaint) {
  EXPECT_FALSE(echo_correction({}));
  EXPECT_TRUE(echo_correction(std::vector<double>{500}));
  EXPECT_FALSE(echo_correction(std::vector<double>{500.1}));
  EXPECT_TRUE(echo_correction(std::vector<double>{140, 155, 900})) << "the median counts";
}

TEST(Echo, RuleIsTheCallersToSet) {
  const std::vector<double> film_um{600};
  const auto c =
      echo_correction(film_um, {.times_film = 2, .least_share = .2, .paint_limit_um = 700});
  ASSERT_TRUE(c);
  EXPECT_NEAR(c->subtract_mm, 1.2, 1e-12);
  EXPECT_NEAR(c->standard_mm, .24, 1e-12);
}

}  // namespace
}  // namespace tinworm::metal
