#include "scene/palette.hpp"

#include <cmath>
#include <functional>
#include <numbers>

#include <gtest/gtest.h>

#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

constexpr Step ramp[] = {Step::sound, Step::film, Step::pitted,
                         Step::thin,  Step::weak, Step::holed};

struct Eye {
  const char* name;
  std::function<Colour(Colour)> sees;
};

const Eye eyes[] = {
    {"as printed", [](Colour colour) { return colour; }},
    {"in grey", grey_of},
    {"protan", [](Colour colour) { return seen_by(Vision::protan, colour); }},
    {"deutan", [](Colour colour) { return seen_by(Vision::deutan, colour); }},
    {"tritan", [](Colour colour) { return seen_by(Vision::tritan, colour); }},
};

TEST(Palette, LightnessFallsAndNeighboursStandApartToEveryEye) {
  for (const Eye& eye : eyes) {
    for (std::size_t i = 1; i < std::size(ramp); ++i) {
      const Colour better = eye.sees(strong(ramp[i - 1])), worse = eye.sees(strong(ramp[i]));
      const std::string pair = std::string(eye.name) + ": " + std::string(step_name(ramp[i]));
      EXPECT_LT(to_oklab(worse).lightness, to_oklab(better).lightness) << pair;
      EXPECT_GE(oklab_distance(better, worse), 0.09) << pair;
    }
  }
}

TEST(Palette, TintsGrowDarkerToo) {
  for (const Eye& eye : eyes) {
    for (std::size_t i = 1; i < std::size(ramp); ++i) {
      EXPECT_LT(to_oklab(eye.sees(pale(ramp[i]))).lightness,
                to_oklab(eye.sees(pale(ramp[i - 1]))).lightness)
          << eye.name << ": " << step_name(ramp[i]);
    }
  }
}

TEST(Palette, NothingGreenOrBlue) {
  for (const Step step : ramp) {
    for (const Colour colour : {strong(step), pale(step), marking(step)}) {
      const Lab lab = to_oklab(colour);
      if (std::hypot(lab.a, lab.b) < 0.005) continue;  // white
      const double hue = std::atan2(lab.b, lab.a) * 180 / std::numbers::pi;
      EXPECT_GT(hue, 20) << step_name(step);
      EXPECT_LT(hue, 95) << step_name(step);
    }
  }
}

TEST(Palette, NotSeenIsCoolAndNoStepOfTheRamp) {
  const Lab grey = to_oklab(not_seen_grey);
  EXPECT_LT(grey.b, 0) << "cool";
  EXPECT_LT(std::hypot(grey.a, grey.b), 0.02) << "a grey";
  for (const Step step : ramp) {
    EXPECT_GE(oklab_distance(not_seen_grey, pale(step)), 0.03) << step_name(step);
  }
  EXPECT_GE(oklab_distance(not_seen_grey, white), 0.2) << "never taken for sound";
}

TEST(Palette, InkReadsOnEveryGround) {
  for (const Step step : ramp) {
    EXPECT_GE(contrast(ink_on(strong(step)), strong(step)), 4.5) << step_name(step);
    EXPECT_GE(contrast(ink_on(pale(step)), pale(step)), 4.5) << step_name(step);
  }
  EXPECT_GE(contrast(soft_ink, paper), 4.5);
  EXPECT_GE(contrast(repair_ink, paper), 4.5);
}

TEST(Palette, TexturesShowOnTheirTints) {
  for (const Step step : ramp) {
    if (step == Step::sound) continue;
    EXPECT_GE(contrast(marking(step), pale(step)), 1.7) << step_name(step);
  }
  EXPECT_GE(contrast(not_seen_mark, not_seen_grey), 1.9);
}

}  // namespace
}  // namespace tinworm::scene
