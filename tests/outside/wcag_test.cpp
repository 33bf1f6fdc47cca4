// Contrast ratio after WCAG 2.2, definition "contrast ratio": (L1 + 0.05) / (L2 + 0.05).
#include <gtest/gtest.h>

#include "outside/record.hpp"
#include "scene/colour.hpp"

namespace tinworm::scene {
namespace {

TEST(Wcag, ContrastOnWhite) {
  struct Case {
    const char* name;
    Colour colour;
    double published;
  };
  const double grey_76 = 0x76 / 255.0, grey_77 = 0x77 / 255.0, green_80 = 0x80 / 255.0;
  const Case cases[] = {
      {"#000000", {0, 0, 0}, 21.00},
      {"#767676", {grey_76, grey_76, grey_76}, 4.5422},
      {"#777777", {grey_77, grey_77, grey_77}, 4.4781},
      {"#ff0000", {1, 0, 0}, 3.9985},
      {"#0000ff", {0, 0, 1}, 8.5925},
      {"#008000", {0, green_80, 0}, 5.1374},
  };
  for (const Case& each : cases) {
    outside::expect_published("WCAG 2.2, contrast ratio (quoted, recomputed)",
                              std::string(each.name) + " on white", each.published,
                              contrast(each.colour, white), 5e-4);
  }
}

}  // namespace
}  // namespace tinworm::scene
