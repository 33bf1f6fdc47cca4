#include "boxes/stiffness.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace tinworm::boxes {
namespace {

// A box 100 by 60 with a middle wall at u = m; walls: outside left of it, right of it, middle.
Section two_cells(double m) {
  return {{{0, 0}, {m, 0}, {100, 0}, {100, 60}, {m, 60}, {0, 60}},
          {{1, 0, 5, 4}, {1, 2, 3, 4}, {1, 4}}};
}

TEST(Torsion, OneCellIsBredts) {
  const Section box{{{0, 0}, {100, 0}, {100, 60}, {0, 60}}, {{0, 1}, {1, 2}, {2, 3}, {3, 0}}};
  // 4 A² / (100/1 + 60/2 + 100/1.5 + 60/0.8)
  EXPECT_NEAR(closed_torsion_mm4(box, {1, 2, 1.5, 0.8}),
              4 * 6000.0 * 6000 / (100 + 30 + 100 / 1.5 + 75), 1e-6);
}

// Two cells written out by hand and solved by Cramer's rule: (Johnson, eq. 2.40, for each cell with
// the flow they share).
TEST(Torsion, TwoCellsAgreeWithTheEquationsByHand) {
  const struct {
    double m, left_mm, right_mm, middle_mm;
  } cases[] = {{40, 1, 1, 1}, {30, 1.2, 0.8, 2}, {70, 0.5, 2, 0.3}, {10, 1, 1, 1}};
  for (const auto& c : cases) {
    const double left = (2 * c.m + 60) / c.left_mm, right = (2 * (100 - c.m) + 60) / c.right_mm;
    const double shared = 60 / c.middle_mm;
    const double a1 = 60 * c.m, a2 = 60 * (100 - c.m);
    const double det = (left + shared) * (right + shared) - shared * shared;
    const double q1 = 2 * (a1 * (right + shared) + a2 * shared) / det;
    const double q2 = 2 * (a2 * (left + shared) + a1 * shared) / det;
    const double expected = 2 * (a1 * q1 + a2 * q2);
    EXPECT_NEAR(closed_torsion_mm4(two_cells(c.m), {c.left_mm, c.right_mm, c.middle_mm}), expected,
                1e-9 * expected)
        << c.m;
  }
}

TEST(Torsion, ASymmetricMiddleWallCarriesNothing) {
  const Section outer{{{0, 0}, {100, 0}, {100, 60}, {0, 60}}, {{0, 1, 2, 3, 0}}};
  const double one = closed_torsion_mm4(outer, {1.3});
  for (const double middle_mm : {0.0, 0.1, 1.0, 50.0}) {
    EXPECT_NEAR(closed_torsion_mm4(two_cells(50), {1.3, 1.3, middle_mm}), one, 1e-9 * one);
  }
  EXPECT_GT(closed_torsion_mm4(two_cells(20), {1.3, 1.3, 1.0}), one * (1 + 1e-6));
}

TEST(Torsion, AWallOfNoSheetOpensItsCell) {
  const Section box{{{0, 0}, {100, 0}, {100, 60}, {0, 60}}, {{0, 1}, {1, 2}, {2, 3}, {3, 0}}};
  EXPECT_EQ(closed_torsion_mm4(box, {1, 1, 0, 1}), 0);
  // Of two cells, only the other is left.
  EXPECT_NEAR(closed_torsion_mm4(two_cells(40), {1, 0, 1}), 4 * 2400.0 * 2400 / 200, 1e-6);
}

TEST(Torsion, FlangesAddNothingClosed) {
  const Section box{{{0, 0}, {100, 0}, {100, 60}, {0, 60}, {-20, 0}, {30, 20}},
                    {{0, 1, 2, 3, 0}, {4, 0}, {0, 5}}};
  EXPECT_NEAR(closed_torsion_mm4(box, {1, 1, 1}), 4 * 36e6 / 320, 1e-6);
  EXPECT_NEAR(open_torsion_mm4(box, {1, 3, 0}), 320.0 / 3 + 20 * 9, 1e-9);
}

TEST(Torsion, TubesThatDoNotMeetTwistTogether) {
  const Section nested{
      {{0, 0}, {100, 0}, {100, 60}, {0, 60}, {40, 20}, {60, 20}, {60, 40}, {40, 40}},
      {{0, 1, 2, 3, 0}, {4, 5, 6, 7, 4}}};
  EXPECT_NEAR(closed_torsion_mm4(nested, {1, 2}), 4 * 36e6 / 320 + 4 * 16e4 / 40, 1e-6);
}

TEST(Torsion, ScalesAsItMust) {
  const double one = closed_torsion_mm4(two_cells(30), {1, 0.7, 0.5});
  for (const double k : {0.9, 0.5, 0.1}) {
    EXPECT_NEAR(closed_torsion_mm4(two_cells(30), {k, 0.7 * k, 0.5 * k}), k * one, 1e-9 * one);
  }
}

TEST(Bending, OfRectangles) {
  // A box 100 by 60 of sheet 1: thin-wall figures, the origin anywhere.
  for (const double shift : {0.0, -1234.5}) {
    Section box{{{0, 0}, {100, 0}, {100, 60}, {0, 60}}, {{0, 1}, {1, 2}, {2, 3}, {3, 0}}};
    for (auto& point : box.points) point = {point.u + shift, point.v - 2 * shift};
    const Bending all = bending(box, {1, 1, 1, 1});
    EXPECT_NEAR(all.area_mm2, 320, 1e-9);
    EXPECT_NEAR(all.centroid.u, 50 + shift, 1e-9);
    EXPECT_NEAR(all.centroid.v, 30 - 2 * shift, 1e-9);
    EXPECT_NEAR(all.about_u_mm4, 2 * 100 * 900 + 2 * 60.0 * 60 * 60 / 12, 1e-3);
    EXPECT_NEAR(all.about_v_mm4, 2 * 60 * 2500 + 2 * 100.0 * 100 * 100 / 12, 1e-3);
    EXPECT_NEAR(all.product_mm4, 0, 1e-3);
    // Without its lower wall the centroid rises, and the parallel-axis rule gives the rest.
    const Bending open = bending(box, {0, 1, 1, 1});
    EXPECT_NEAR(open.centroid.v, (2 * 60 * 30 + 100 * 60) / 220.0 - 2 * shift, 1e-9);
    EXPECT_NEAR(open.about_u_mm4, 100 * 3600 + 2 * 72000 - 220 * std::pow(9600 / 220.0, 2), 1e-3);
  }
}

TEST(Bending, OfNothing) {
  EXPECT_EQ(bending(Section{}, {}).area_mm2, 0);
}

}  // namespace
}  // namespace tinworm::boxes
