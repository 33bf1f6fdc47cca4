// Thin-walled sections against published figures.
//
// Source: W. D. Pilkey, Analysis and Design of Elastic Beams, 2002, examples 5.7 (p. 189), 5.14
// (p. 221), 6.2 (p. 253) and 1.1 (p. 18), quoted. Pilkey's figures come from whole sections of
// finite thickness, ours from lines of sheet: the tolerances are what that leaves, and half of the
// last figure printed. The square tube's ratio is worked from the two formulas. Lengths have no
// unit.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "boxes/stiffness.hpp"

namespace tinworm::boxes {
namespace {

constexpr double pi = std::numbers::pi;

// The middle line of a tube in 720 straight pieces: radius 3.875, wall 0.25.
Section tube(bool slit) {
  Section tube;
  std::vector<int> round;
  for (int i = 0; i < 720; ++i) {
    tube.points.push_back({3.875 * std::cos(2 * pi * i / 720), 3.875 * std::sin(2 * pi * i / 720)});
    round.push_back(i);
  }
  if (slit) {
    tube.points.push_back(tube.points[0]);  // at the same place, not joined
    round.push_back(720);
  } else {
    round.push_back(0);
  }
  tube.walls = {round};
  return tube;
}

double torsion(const Section& section, double sheet) {
  const std::vector<double> sheets(section.walls.size(), sheet);
  return closed_torsion_mm4(section, sheets) + open_torsion_mm4(section, sheets);
}

TEST(Pilkey, Example57Tube) {
  const double closed = closed_torsion_mm4(tube(false), {0.25});
  EXPECT_NEAR(closed, 91.398, 0.005);                    // the formula, worked
  EXPECT_NEAR(torsion(tube(false), 0.25), 91.49, 0.05);  // published; 0.05 %
}

TEST(Pilkey, Example57SlitTube) {
  const double open = torsion(tube(true), 0.25);
  EXPECT_NEAR(open, 0.13, 0.005);       // published to two places
  EXPECT_NEAR(open, 0.12681, 0.00001);  // the formula, worked
  EXPECT_NEAR(closed_torsion_mm4(tube(false), {0.25}) / open, 720.75, 0.05);  // 3 (r/t)²
}

const Section angle{{{0, 0}, {0, -2}, {1, 0}}, {{1, 0, 2}}};  // legs 2 and 1 meet at the origin
const Section channel{{{1, 0}, {0, 0}, {0, 2}, {1, 2}}, {{0, 1, 2, 3}}};

TEST(Pilkey, Example514Angle) {
  EXPECT_NEAR(torsion(angle, 0.1), 0.00099, 0.000015);
}

TEST(Pilkey, Example62Channel) {
  EXPECT_NEAR(torsion(channel, 0.1), 0.00133, 0.000005);
  EXPECT_NEAR(bending(channel, {0.1}).centroid.u, 0.24937, 0.001);
}

TEST(Pilkey, Example11Angle) {
  const Bending angles = bending(angle, {0.1});
  EXPECT_NEAR(angles.area_mm2, 0.3, 1e-12);
  EXPECT_NEAR(angles.centroid.u, 0.1663, 0.0005);
  EXPECT_NEAR(angles.centroid.v, -0.6663, 0.0005);
  EXPECT_NEAR(angles.about_u_mm4, 0.1336, 0.0004);
  EXPECT_NEAR(angles.about_v_mm4, 0.0252, 0.00025);
  EXPECT_NEAR(angles.product_mm4, 0.0332, 0.0002);
  const double middle = (angles.about_u_mm4 + angles.about_v_mm4) / 2;
  const double half = (angles.about_u_mm4 - angles.about_v_mm4) / 2;
  const double radius = std::hypot(half, angles.product_mm4);
  EXPECT_NEAR(middle + radius, 0.1430, 0.0004);
  EXPECT_NEAR(middle - radius, 0.0158, 0.0003);
  EXPECT_NEAR(-std::atan2(angles.product_mm4, half) / 2 * 180 / pi, -15.7589, 0.2);
}

TEST(Pilkey, SquareTubeClosedAndOpen) {
  for (const double t : {0.5, 1.0, 2.0}) {
    const Section square{{{0, 0}, {100, 0}, {100, 100}, {0, 100}}, {{0, 1, 2, 3, 0}}};
    EXPECT_NEAR(closed_torsion_mm4(square, {t}) / open_torsion_mm4(square, {t}),
                0.75 * std::pow(100 / t, 2), 1e-6 * std::pow(100 / t, 2));
  }
}

}  // namespace
}  // namespace tinworm::boxes
