// Path data against what the SVG specification states, and areas against closed forms.
//
// Source: W3C, Scalable Vector Graphics (SVG) 1.1 (Second Edition), chapter 8 and appendix F.6,
// kept in SVG 2, chapter 9 and appendix B.2. The examples and section numbers are quoted from
// memory.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "geometry/area.hpp"
#include "geometry/path_text.hpp"

namespace tinworm::geometry {
namespace {

constexpr double pi = std::numbers::pi;

Outline outline(const std::string& data) {
  return flatten(parse_path(data).value());
}

TEST(SvgPath, SpellingsThatTheSpecificationCallsEqual) {
  const struct {
    std::string_view section, one, other;
  } cases[] = {
      {"8.3.1 superfluous white space", "M 100 100 L 200 200", "M100 100L200 200"},
      {"8.3.1 a repeated letter", "M 100 200 L 200 100 L -100 -200",
       "M 100 200 L 200 100 -100 -200"},
      {"8.3.2 pairs after moveto are lineto", "M 100 200 200 100 -100 -200",
       "M 100 200 L 200 100 L -100 -200"},
      {"8.3.2 a first m is absolute", "m 100 200 l 1 1", "M 100 200 l 1 1"},
      {"8.3.2 pairs after m are l", "m 100 200 1 1 2 2", "M 100 200 l 1 1 l 2 2"},
      {"8.3.3 after closepath its start", "M10 10 h5 v5 z l1 1", "M10 10 h5 v5 z M10 10 l1 1"},
      {"8.3.4 horizontal and vertical", "M1 2 H9 V8 h1 v1", "M1 2 L9 2 L9 8 l1 0 l0 1"},
      {"8.3.6 smooth cubic", "M100,200 C100,100 250,100 250,200 S400,300 400,200",
       "M100,200 C100,100 250,100 250,200 C250,300 400,300 400,200"},
      {"8.3.7 smooth quadratic", "M200,300 Q400,50 600,300 T1000,300",
       "M200,300 Q400,50 600,300 Q800,550 1000,300"},
      {"8.3.9 M 100-200", "M 100-200", "M 100 -200"},
      {"8.3.9 M 0.6.5", "M 0.6.5", "M 0.6 0.5"},
      {"F.6.2 radius 0 is a line", "M1 1 A0 9 0 0 1 5 5", "M1 1 L5 5"},
      {"F.6.2 no length is no arc", "M1 1 A9 9 0 0 1 1 1 L5 5", "M1 1 L5 5"},
      {"F.6.6 signs of radii", "M1 1 A-9 -9 0 0 1 5 5", "M1 1 A9 9 0 0 1 5 5"},
  };
  for (const auto& c : cases) {
    // A subpath after Z and one with its M written out flatten alike, so outlines are compared.
    const Outline one = outline(std::string(c.one)), other = outline(std::string(c.other));
    EXPECT_EQ(one.rings, other.rings) << c.section;
    EXPECT_EQ(one.open, other.open) << c.section;
  }
}

TEST(SvgPath, WhatTheSpecificationCallsAnError) {
  for (const std::string_view data :
       {"L 1 1", "M 1", "M 1 1 L 2", "M 1 1 , L 2 2", "M 1 1 A 1 1 0 2 0 1 1"}) {
    EXPECT_FALSE(parse_path(data)) << data;
  }
}

// Polygons of 5-degree steps lie within the circle, by sin(5°)/5° = 0.99873 of its sector.
void expect_round(double polygon, double closed_form, double curved_part) {
  EXPECT_LE(polygon, closed_form * (1 + 1e-12));
  EXPECT_GE(polygon, closed_form - 0.00128 * curved_part);
}

TEST(SvgPath, AreasOfArcs) {
  const struct {
    const char* data;
    double area, round;  // mm²; of the curved part
  } cases[] = {
      // 8.3.8, the pie of the specification's figure: three quarters and one quarter of r 150
      {"M300,200 h-150 a150,150 0 1,0 150,-150 z", 0.75 * pi * 150 * 150, 0.75 * pi * 150 * 150},
      {"M275,175 v-150 a150,150 0 0,0 -150,150 z", 0.25 * pi * 150 * 150, 0.25 * pi * 150 * 150},
      // a circle of two halves, an ellipse of two halves, the same turned by 30 degrees
      {"M-50 0a50 50 0 0 1 100 0a50 50 0 0 1-100 0z", pi * 2500, pi * 2500},
      {"M-50 0a50 20 0 0 1 100 0a50 20 0 0 1-100 0z", pi * 1000, pi * 1000},
      // circular segment of 90 degrees: r²/2 (θ − sin θ)
      {"M100 0A100 100 0 0 1 0 100z", 5000 * (pi / 2 - 1), 0.25 * pi * 10000},
      // a stadium: rectangle and two halves
      {"M0 0H200a40 40 0 0 1 0 80H0a40 40 0 0 1 0-80z", 200 * 80 + pi * 1600, pi * 1600},
      // F.6.6: radii too small are scaled up until they reach: a half circle of r 50
      {"M0 0A1 1 0 0 1 100 0z", 0.5 * pi * 2500, 0.5 * pi * 2500},
      {"M0 0A2 1 0 0 1 100 0z", 0.5 * pi * 50 * 25, 0.5 * pi * 50 * 25},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.data);
    expect_round(area(outline(c.data)), c.area, c.round);
  }
}

// 8.3.8, the figure of the four arcs: rx 100, ry 50 from (125,75) to (225,125), which lie a quarter
// of the ellipse apart. Chord and arc enclose the small or the large segment, on one side or the
// other: the sign is that of the way round (in the specification's axes, y down).
TEST(SvgPath, TheFourArcsOfTheFlags) {
  const double small = pi * 5000 / 4 - 2500, large = 3 * pi * 5000 / 4 + 2500;
  const struct {
    const char* flags;
    double area;
    Point centre;
  } cases[] = {
      {"0,0", -small, {225, 75}},
      {"0,1", small, {125, 125}},
      {"1,0", -large, {125, 125}},
      {"1,1", large, {225, 75}},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.flags);
    const Outline shape = outline(std::string("M125,75 a100,50 0 ") + c.flags + " 100,50 z");
    expect_round(area(shape), std::abs(c.area),
                 pi * 5000 * (c.area > 0 && c.area < 5000 ? .25 : .75));
    double twice = 0;
    const Ring& ring = shape.rings.at(0);
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point &a = ring[i], &b = ring[(i + 1) % ring.size()];
      twice += a.u * b.v - b.u * a.v;
      EXPECT_NEAR(std::hypot((a.u - c.centre.u) / 100, (a.v - c.centre.v) / 50), 1, 1e-9);
    }
    EXPECT_EQ(twice > 0, c.area > 0);
  }
}

TEST(SvgPath, RotationTurnsTheEllipse) {
  // An ellipse 100 by 50 turned by 90 degrees is one 50 by 100; by 450 the same.
  const Outline upright = outline("M0-100A50 100 0 0 1 0 100A50 100 0 0 1 0-100z");
  for (const char* turn : {"90", "-90", "270", "450"}) {
    const std::string arc = std::string("A100 50 ") + turn + " 0 1 ";
    const Outline turned = outline("M0-100" + arc + "0 100" + arc + "0-100z");
    ASSERT_EQ(turned.rings.at(0).size(), upright.rings.at(0).size()) << turn;
    for (std::size_t i = 0; i < upright.rings[0].size(); ++i) {
      EXPECT_NEAR(turned.rings[0][i].u, upright.rings[0][i].u, 1e-9) << turn;
      EXPECT_NEAR(turned.rings[0][i].v, upright.rings[0][i].v, 1e-9) << turn;
    }
  }
}

// A cubic with handles of 0.5522847498 r is the usual quarter of a circle (common practice); and
// the area under one arch of a quadratic is two thirds of base times height of the arch
// (Archimedes).
TEST(SvgPath, AreasOfBeziers) {
  EXPECT_NEAR(area(outline("M0 0H100C100 55.22847498 55.22847498 100 0 100z")), pi * 2500,
              0.001 * pi * 2500);
  EXPECT_NEAR(area(outline("M0 0Q50 100 100 0z")), 2.0 / 3 * 100 * 50, 0.001 * 3333);
}

}  // namespace
}  // namespace tinworm::geometry
