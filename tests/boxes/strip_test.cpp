#include "boxes/strip.hpp"

#include <gtest/gtest.h>

namespace tinworm::boxes {
namespace {

// A wall 100 mm wide of 2 mm sheet: 50 when sound.
TEST(Strip, ShearPath) {
  const struct {
    std::vector<Strip> strips;
    double path;
  } cases[] = {
      {{}, 50},
      {{{0, 500, 10, 1}}, 50},
      {{{0, 500, 0, 0}}, 50},
      {{{0, 500, 10, 0.5}}, 55},    // long: 90/2 + 10/1
      {{{0, 500, 100, 0.5}}, 100},  // all of it
      {{{0, 500, 250, 0.5}}, 100},  // wider than the wall: all of it
      {{{0, 500, 10, 0.5}, {0, 500, 20, 0.8}}, 57.5},
      // A hole 10 by 50: 100/4 · 10^0.1 · 1.5² = 70.8145544
      {{{200, 250, 10, 0}}, (100 + 70.8145544) / 2},
      // A short strip so thin that shear goes round it all the same: 10 · 999 = 9990 mm is more.
      {{{200, 250, 10, 0.001}}, (100 + 70.8145544) / 2},
      {{{200, 250, 10, 0.2}}, 70},  // 40 mm is less
  };
  for (const auto& c : cases) EXPECT_NEAR(shear_path(100, 2, c.strips), c.path, 1e-7);
}

TEST(Strip, ShearPathNeverShortensAsMetalGoes) {
  for (const double width : {1.0, 10.0, 60.0, 100.0}) {
    for (const double length : {1.0, 50.0, 2000.0}) {
      double before = 0;
      for (int i = 100; i >= 0; --i) {
        const double path = shear_path(100, 2, {{0, length, width, i / 100.0}});
        EXPECT_GE(path, before);
        before = path;
      }
    }
  }
}

TEST(Strip, OpenTorsion) {
  EXPECT_DOUBLE_EQ(open_torsion_mm4(100, 3, {}), 900);
  EXPECT_DOUBLE_EQ(open_torsion_mm4(100, 3, {{0, 1, 20, 0}}), 720);
  EXPECT_DOUBLE_EQ(open_torsion_mm4(100, 3, {{0, 1, 20, 0.5}}), 720 + 180 * 0.125);
  EXPECT_DOUBLE_EQ(open_torsion_mm4(100, 3, {{0, 1, 70, 0}, {0, 1, 70, 0}}), 0);
}

TEST(Strip, BendingSheet) {
  EXPECT_DOUBLE_EQ(bending_sheet_mm(100, 2, {}), 2);
  EXPECT_DOUBLE_EQ(bending_sheet_mm(100, 2, {{0, 1, 20, 0}}), 1.6);
  EXPECT_DOUBLE_EQ(bending_sheet_mm(100, 2, {{0, 1, 20, 0.5}, {0, 1, 40, 0.5}}), 1.4);
  EXPECT_DOUBLE_EQ(bending_sheet_mm(100, 2, {{0, 1, 900, 0.5}}), 1);
  EXPECT_DOUBLE_EQ(bending_sheet_mm(100, 2, {{0, 1, 70, 0}, {0, 1, 70, 0}}), 0);
}

}  // namespace
}  // namespace tinworm::boxes
