#include "metal/damage.hpp"

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

const std::vector<DamageKnot> knots{{1, 0}, {.95, .10}, {.85, .30}, {.50, .75}, {0, 1}};

TEST(Damage, ThroughItsKnotsAndStraightBetween) {
  struct Case {
    double metal_left, damage;
  };
  for (const Case& c : std::vector<Case>{{1, 0},
                                         {.975, .05},
                                         {.95, .10},
                                         {.90, .20},
                                         {.85, .30},
                                         {.675, .525},
                                         {.50, .75},
                                         {.25, .875},
                                         {0, 1}}) {
    EXPECT_NEAR(damage(c.metal_left, knots), c.damage, 1e-12) << c.metal_left;
  }
}

TEST(Damage, LevelBeyondTheEnds) {
  EXPECT_EQ(damage(1.2, knots), 0);
  EXPECT_EQ(damage(-.1, knots), 1);
  EXPECT_EQ(damage(.3, std::vector<DamageKnot>{{.5, .4}}), .4);
}

TEST(Damage, LessMetalIsNeverLessDamage) {
  double before = 1;
  for (int i = 0; i <= 1000; ++i) {
    const double here = damage(i / 1000.0, knots);
    EXPECT_LE(here, before) << i;
    before = here;
  }
}

}  // namespace
}  // namespace tinworm::metal
