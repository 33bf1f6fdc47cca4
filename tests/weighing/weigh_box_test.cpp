// A box of four walls with sheet of 1 mm, 100 wide (y 0 to 100) and 200 high (z 0 to 200), 1000
// long from x = 400. Left (d a) and bottom (a b) are zone 51, right and top zone 61. Worked by
// hand, thin-walled: about the level axis 2 x 200^3/12 + 2 x 100 x 100^2 = 3 333 333 mm4, about the
// upright one 2 x 100^3/12 + 2 x 200 x 50^2 = 1 166 667 mm4; torsion 4 A^2/(600/1) + 600/3 = 2 666
// 867 mm4 (Bredt; Pilkey, Formulas for Stress, Strain and Structural Matrices, from memory).
#include "weighing/weigh_box.hpp"

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

body::Box box() {
  body::Box box;
  box.name = "sill";
  box.from_mm = 400;
  box.to_mm = 1400;
  box.points = {{"a", {0, 0}}, {"b", {100, 0}}, {"c", {100, 200}}, {"d", {0, 200}}};
  box.walls = {{"a b", 51, {}}, {"b c", 61, {}}, {"c d", 61, {}}, {"d a", 51, {}}};
  return box;
}

survey::Survey survey_of_box() {
  body::Plan plan = fixture::plan();
  for (body::Zone& zone : plan.zones)
    if (zone.number == 61) zone.sheet_mm = 1;
  return fixture::sound_survey(std::move(plan));
}

// The box with one spot in zone 51 that has half of its metal.
BoxResult with_half(const survey::Position& at, std::optional<survey::Size> size,
                    const body::Box& of = box()) {
  const survey::Survey survey = survey_of_box();
  std::vector<Zone> zones = weigh(survey, {}).zones;
  const auto facts = zone_facts(survey);
  Spot spot;
  spot.found = true;
  spot.at = at;
  spot.size = size;
  spot.metal.weighed = {.5, .5, .5};
  for (Zone& zone : zones)
    if (zone.number == 51) zone.spots = {spot};
  return weigh_box(of, zones, facts, {});
}

// 40 of a wall at half its metal, all along: the left wall bends as 1 - .5 x 40/200 = .9 of its
// sheet, the bottom one as .8.
// Left: areas 180 200 100 100, centroid at y 51.7241; about the upright axis 2 666 667 - 580 x
// 51.7241^2 = 1 114 943: .955665, less than 3 266 667/3 333 333.
// Bottom: 200 200 80 100, centroid at z 103.4483; about the level axis 9 333 333 - 580 x 103.4483^2
// = 3 126 437: .937931. Both: .917857.
TEST(WeighBox, ASpotThinsTheWallItLiesNearest) {
  const struct {
    const char* what;
    survey::Position at;
    double bending;
  } cases[] = {
      {"on the left wall", {900, 0, 150}, .955665},
      {"nearer to the left wall", {900, 5, 150}, .955665},
      {"on the bottom wall", {900, 60, 5}, .937931},
      {"only its height known: the left wall reaches it", {900, {}, 150}, .955665},
      {"only its side known: the bottom wall reaches it", {900, 60, {}}, .937931},
      {"nothing known: all walls of the zone", {900, {}, {}}, .917857},
      {"in the corner of both", {900, 0, 0}, .917857},
  };
  for (const auto& each : cases) {
    const BoxResult got = with_half(each.at, survey::Size{1000, 40});
    EXPECT_EQ(got.withheld, "") << each.what;
    EXPECT_NEAR(got.bending_kept->value, each.bending, 1e-6) << each.what;
    EXPECT_EQ(got.bending_kept->value, got.bending_kept->high) << each.what;
    EXPECT_LT(got.bending_kept->low, got.bending_kept->value) << each.what;  // 61 at .95 unproved
  }
}

// Between two points of its path a wall is one straight face: a place thins the face it lies on and
// not the path round the corner. The figures are those of two walls.
TEST(WeighBox, AFaceOfABentWallIsThinnedAlone) {
  body::Box bent = box();
  bent.walls = {{"d a b", 51, {}}, {"b c d", 61, {}}};
  const struct {
    const char* what;
    survey::Position at;
    double bending;
  } cases[] = {
      {"on its left face", {900, 0, 150}, .955665},
      {"on its bottom face", {900, 60, 5}, .937931},
      {"in the corner: both", {900, 0, 0}, .917857},
  };
  for (const auto& each : cases) {
    const BoxResult got = with_half(each.at, survey::Size{1000, 40}, bent);
    EXPECT_NEAR(got.bending_kept->value, each.bending, 1e-6) << each.what;
  }
}

// A pit through the sheet caps the metal left at half, whatever was read beside it.
TEST(WeighBox, TakesMetalLeftAsCappedByPits) {
  survey::Survey survey = survey_of_box();
  survey.zones[51].reference_mm = {1, 1, 1};
  survey::Spot read = fixture::placed("a", survey::Rust::pitting, {900, 0, 150}, {1000, 40});
  read.metal_mm = {.97, .97, .97};
  const auto bending = [&](double pit_mm) {
    survey.zones[51].found = {read};
    if (pit_mm > 0) survey.zones[51].found[0].pit_mm = {pit_mm};
    return weigh_box(box(), weigh(survey, {}).zones, zone_facts(survey), {}).bending_kept->value;
  };
  EXPECT_NEAR(bending(.98), .955665, 1e-6) << "as half of the sheet";
  EXPECT_GT(bending(.40), bending(.98));
  EXPECT_GT(bending(0), bending(.40));
}

// Without a size: all of the wall over a quarter of the length, 250 mm. Left at half: areas 100 200
// 100 100, centroid at y 60; 2 666 667 - 500 x 60^2 = 866 667 of 1 166 667: .742857. Twist there:
// 4 A^2/800 + (400 + 200/8)/3 = 2 000 142, .749997 of sound; in series 1000/(750 + 250/.749997) =
// .923076.
TEST(WeighBox, ASpotWithoutSizeTakesAQuarterOfTheLength) {
  const BoxResult got = with_half({{}, 0, 150}, std::nullopt);
  EXPECT_NEAR(got.bending_kept->value, .742857, 1e-6);
  EXPECT_NEAR(got.twist_kept->value, .923076, 1e-6);
}

TEST(WeighBox, ASoundOneKeepsAll) {
  const survey::Survey survey = survey_of_box();
  const BoxResult got = weigh_box(box(), weigh(survey, {}).zones, zone_facts(survey), {});
  EXPECT_EQ(got.name, "sill");
  EXPECT_NEAR(got.twist_kept->value, 1, 1e-12);
  EXPECT_NEAR(got.bending_kept->value, 1, 1e-12);
  // All walls at .95, what a look at bare metal can miss: bending .95 of sound.
  EXPECT_NEAR(got.bending_kept->low, .95, 1e-9);
}

TEST(WeighBox, WithholdsWhereTooLittleIsKnown) {
  using survey::SeenWord;
  const struct {
    void (*change)(survey::Survey&);
    const char* withheld;
  } cases[] = {
      {[](survey::Survey& s) { s.seen[51].word = s.seen[61].word = SeenWord::hidden; },
       "none of its walls was seen"},
      {[](survey::Survey& s) { s.zones[51].inside = survey::Inside::not_seen; },
       "the inside of outer sill, left (51) wasn't seen"},
      {[](survey::Survey& s) { s.zones[61].found = {fixture::spot("lower", survey::Rust::seam)}; },
       "a seam of spring hanger, left (61) is rusted"},
  };
  for (const auto& each : cases) {
    survey::Survey survey = survey_of_box();
    each.change(survey);
    const BoxResult got = weigh_box(box(), weigh(survey, {}).zones, zone_facts(survey), {});
    EXPECT_EQ(got.withheld, each.withheld);
    EXPECT_FALSE(got.twist_kept || got.bending_kept);
  }
}

}  // namespace
}  // namespace tinworm::weighing
