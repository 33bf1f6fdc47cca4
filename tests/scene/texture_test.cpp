#include "scene/texture.hpp"

#include <set>

#include <gtest/gtest.h>

#include "scene/naming.hpp"
#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

constexpr Step all_steps[] = {Step::not_seen, Step::sound, Step::bloom, Step::pitted,
                              Step::thin,     Step::weak,  Step::holed};

TEST(Texture, EveryStepHasItsOwn) {
  std::set<Texture> textures;
  for (const Step step : all_steps) textures.insert(texture_of(step));
  EXPECT_EQ(textures.size(), std::size(all_steps));
}

TEST(Texture, CoarseEnoughToPrint) {
  for (const Step step : all_steps) {
    const Texture texture = texture_of(step);
    if (texture == Texture::none) continue;
    EXPECT_GE(weave_of(texture).pitch_mm, 0.9) << step_name(step);
    EXPECT_GE(weave_of(texture).stroke_mm, 0.18) << step_name(step);
    EXPECT_LE(weave_of(texture).pitch_mm, 2.5) << step_name(step);
  }
}

// A sill is a narrow band: its texture must still be there, wherever on the page it lies.
TEST(Texture, ShowsInABandOfTwoAndAHalfMillimetres) {
  for (const Step step : all_steps) {
    if (texture_of(step) == Texture::none) continue;
    for (double shift = 0; shift < 3; shift += 0.17) {
      const std::vector<Polyline> band{polyline(Area{13 + shift, 31 + shift, 30, 2.5})};
      std::size_t lines = 0;
      for (const Shape& shape : strokes(texture_of(step), band, ink)) lines += shape.lines.size();
      EXPECT_GE(lines, 5U) << step_name(step) << " at " << shift;
    }
  }
}

TEST(Texture, NothingIsDrawnFarFromTheShape) {
  const std::vector<Polyline> shape{circle({50, 50}, 6)};
  for (const Step step : all_steps) {
    for (const Shape& each : strokes(texture_of(step), shape, ink)) {
      EXPECT_TRUE(bounds(shape).grown(13).contains(bounds(each.lines))) << step_name(step);
    }
  }
}

}  // namespace
}  // namespace tinworm::scene
