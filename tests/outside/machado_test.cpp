// What people with a colour deficiency see: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes,
// "A physiologically-based model for simulation of color vision deficiency", IEEE Transactions on
// Visualization and Computer Graphics 15, 2009; the published matrices of severity 1.0.
#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "outside/record.hpp"
#include "scene/colour.hpp"

namespace tinworm::scene {
namespace {

// IEC 61966-2-1, to hold a linear figure against an encoded one.
double encoded(double linear) {
  linear = std::clamp(linear, 0.0, 1.0);
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

TEST(Machado, PrimariesGiveTheColumnsOfTheMatrices) {
  struct Case {
    const char* name;
    Vision vision;
    Colour primary;
    double red, green, blue;  // linear, as printed
  };
  const Case cases[] = {
      {"protan, red", Vision::protan, {1, 0, 0}, 0.152286, 0.114503, -0.003882},
      {"protan, green", Vision::protan, {0, 1, 0}, 1.052583, 0.786281, -0.048116},
      {"protan, blue", Vision::protan, {0, 0, 1}, -0.204868, 0.099216, 1.051998},
      {"deutan, red", Vision::deutan, {1, 0, 0}, 0.367322, 0.280085, -0.011820},
      {"deutan, green", Vision::deutan, {0, 1, 0}, 0.860646, 0.672501, 0.042940},
      {"deutan, blue", Vision::deutan, {0, 0, 1}, -0.227968, 0.047413, 0.968881},
      {"tritan, red", Vision::tritan, {1, 0, 0}, 1.255528, -0.078411, 0.004733},
      {"tritan, green", Vision::tritan, {0, 1, 0}, -0.076749, 0.930809, 0.691367},
      {"tritan, blue", Vision::tritan, {0, 0, 1}, -0.178779, 0.147602, 0.303900},
  };
  const std::string source = "Machado, Oliveira, Fernandes 2009, severity 1.0 (quoted)";
  for (const Case& each : cases) {
    const Colour ours = seen_by(each.vision, each.primary);
    const std::string name = each.name;
    outside::expect_published(source, name + ", R", encoded(each.red), ours.red, 1e-9);
    outside::expect_published(source, name + ", G", encoded(each.green), ours.green, 1e-9);
    outside::expect_published(source, name + ", B", encoded(each.blue), ours.blue, 1e-9);
  }
}

TEST(Machado, WhiteStaysWhite) {
  for (const Vision vision : {Vision::protan, Vision::deutan, Vision::tritan}) {
    const Colour seen = seen_by(vision, white);
    EXPECT_NEAR(seen.red, 1, 1e-5);
    EXPECT_NEAR(seen.green, 1, 1e-5);
    EXPECT_NEAR(seen.blue, 1, 1e-5);
  }
}

}  // namespace
}  // namespace tinworm::scene
