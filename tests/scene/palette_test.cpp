#include "scene/palette.hpp"

#include <cmath>
#include <functional>
#include <numbers>

#include <gtest/gtest.h>

#include "documents/typography.hpp"
#include "scene/chart_key.hpp"
#include "scene/legend.hpp"
#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

constexpr Step ramp[] = {Step::sound, Step::bloom, Step::pitted,
                         Step::thin,  Step::weak,  Step::holed};

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

// Bold diagonals of 0.5 mm on rows 2.2 mm apart along the edge, 1.56 across: what the eye mixes.
TEST(Palette, WhatWasNotSeenIsLighterThanAnyInkFromPittedOn) {
  constexpr double share = 0.5 / 1.56;
  for (const Eye& eye : eyes) {
    const double luminance = (1 - share) * relative_luminance(eye.sees(not_seen_ground)) +
                             share * relative_luminance(eye.sees(not_seen_mark));
    for (const Step step : {Step::pitted, Step::thin, Step::weak, Step::holed})
      EXPECT_GT(luminance, relative_luminance(eye.sees(strong(step))))
          << eye.name << ": " << step_name(step);
    EXPECT_LT(luminance, 0.7) << eye.name << ": yet never white";
  }
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

TEST(Palette, ConstantsAreTheColoursTheyAreSaidToBe) {
  const struct {
    const char* name;
    Colour constant;
    double lightness, chroma, hue_deg;
  } cases[] = {
      {"ink", ink, 0.20, 0.005, 60},
      {"soft ink", soft_ink, 0.42, 0.005, 60},
      {"faint ink", faint_ink, 0.62, 0.005, 60},
      {"not seen", not_seen_grey, 0.78, 0.012, 250},
      {"ground not seen", not_seen_ground, 0.92, 0.008, 250},
      {"lines under a coating", coated_mark, 0.80, 0.004, 60},
      {"its diagonals", not_seen_mark, 0.58, 0.014, 250},
      {"repair", repair_ink, 0.30, 0.055, 262},
      {"grid of a chart", grid_grey, 0.86, 0.003, 60},
      {"band of a chart", band_grey, 0.90, 0.004, 60},
  };
  for (const auto& [name, constant, lightness, chroma, hue_deg] : cases) {
    const Colour placed = from_oklch(lightness, chroma, hue_deg);
    EXPECT_NEAR(constant.red, placed.red, 1e-8) << name;
    EXPECT_NEAR(constant.green, placed.green, 1e-8) << name;
    EXPECT_NEAR(constant.blue, placed.blue, 1e-8) << name;
  }
  EXPECT_EQ(not_seen_grey, strong(Step::not_seen));
  EXPECT_EQ(not_seen_grey, pale(Step::not_seen));
}

// A line, letter or edge that takes a colour of the palette must have taken its value.
TEST(Palette, EveryCopyHasTheColourItWasCopiedFrom) {
  EXPECT_EQ(sheet_stroke.colour, soft_ink);
  EXPECT_EQ(limit_stroke.colour, ink);
  EXPECT_EQ(repair_stroke.colour, repair_ink);
  EXPECT_EQ(bar_stroke.colour, ink);
  EXPECT_EQ(band_stroke.colour, soft_ink);
  EXPECT_EQ(documents::note_style.colour, soft_ink);
  Used used;
  for (const Step step : ramp) used.zones.insert(step);
  used.not_seen = true;
  for (const LegendEntry& entry : legend_of(used, {})) {
    const auto& edge = std::get<Shape>(entry.swatch.back());
    ASSERT_TRUE(edge.stroke.has_value()) << entry.words;
    EXPECT_EQ(edge.stroke->colour, ink) << entry.words;
  }
}

}  // namespace
}  // namespace tinworm::scene
