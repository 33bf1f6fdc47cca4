// OKLab as published by its author (B. Ottosson, "A perceptual color space for image processing",
// 2020) and adopted in CSS Color Module Level 4.
#include <gtest/gtest.h>

#include "outside/record.hpp"
#include "scene/colour.hpp"

namespace tinworm::scene {
namespace {

TEST(Oklab, PrimariesOfSrgb) {
  struct Case {
    const char* name;
    Colour colour;
    Lab published;
  };
  const Case cases[] = {
      {"red", {1, 0, 0}, {0.6279553606, 0.2248630611, 0.1258462985}},
      {"green", {0, 1, 0}, {0.8664396115, -0.2338875742, 0.1794984799}},
      {"blue", {0, 0, 1}, {0.4520137184, -0.0324569842, -0.3115281477}},
      {"white", {1, 1, 1}, {0.9999999935, 0, 0}},
  };
  const std::string source = "OKLab, Ottosson 2020; CSS Color 4 (quoted)";
  for (const Case& each : cases) {
    const Lab ours = to_oklab(each.colour);
    const std::string name = std::string("sRGB ") + each.name;
    outside::expect_published(source, name + ", L", each.published.lightness, ours.lightness, 1e-7);
    outside::expect_published(source, name + ", a", each.published.a, ours.a, 1e-7);
    outside::expect_published(source, name + ", b", each.published.b, ours.b, 1e-7);
  }
}

TEST(Oklab, BackAndForth) {
  for (const Colour colour : {Colour{0.2, 0.5, 0.8}, Colour{0.9, 0.1, 0.3}, Colour{0, 0, 0}}) {
    const Colour back = from_oklab(to_oklab(colour));
    EXPECT_NEAR(back.red, colour.red, 1e-6);
    EXPECT_NEAR(back.green, colour.green, 1e-6);
    EXPECT_NEAR(back.blue, colour.blue, 1e-6);
  }
}

}  // namespace
}  // namespace tinworm::scene
