#include "weighing/pits_at.hpp"

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using fixture::spot;
using survey::Rust;

// In a zone whose sheet was measured with 1 mm.
Spot weighed(const survey::Spot& found) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].found = {found};
  survey.zones[11].reference_mm = {1.0, 1.0};
  return weigh(survey, {}).zone(11)->spots.front();
}

TEST(PitsAt, MakeAPlaceThinAndThenWeak) {
  const struct {
    const char* what;
    std::vector<double> metal_mm, pit_mm;
    double pit_left;
    Step step;
    double value;
  } cases[] = {
      {"30 % deep leaves 70 %: on the limit", {}, {.30}, .70, Step::bloom, .98},
      {"a little deeper", {}, {.31, .25}, .69, Step::thin, .85},
      {"through the sheet", {}, {1.0}, 0, Step::weak, .50},
      {"from the surface that is left", {.90, .90}, {.25}, .65, Step::thin, .85},
      {"through what is left", {.60, .60}, {.60}, 0, Step::weak, .50},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    survey::Spot found = spot("a", Rust::surface);
    found.metal_mm = c.metal_mm;
    found.pit_mm = c.pit_mm;
    const Spot got = weighed(found);
    ASSERT_TRUE(got.metal.pit_left);
    EXPECT_NEAR(*got.metal.pit_left, c.pit_left, 1e-12);
    EXPECT_EQ(got.step, c.step);
    EXPECT_NEAR(got.metal.weighed.value, c.value, 1e-12);
    EXPECT_TRUE(got.by_measure_or_hand);
  }
}

// Five patches of 50x50; by hand as in metal/pits_test.cpp.
TEST(PitsAt, OverPatchesSpeakForTheWholePlace) {
  using enum metal::Extrapolation;
  const std::vector<double> pits{.18, .22, .25, .21, .30}, shallow{.09, .11, .125, .105, .15};
  const std::string only_seen =
      "deepest pit of the whole place not estimated, only the deepest seen counts: ";
  const struct {
    const char* what;
    std::vector<double> deepest_mm, pit_mm;
    std::optional<survey::Size> size;
    double left, left_low;
    Step step, step_low;
    double weighed_low;
    std::optional<metal::Extrapolation> over_place;
    std::string remark;
  } cases[] = {
      {"20 patches large",
       pits,
       {},
       survey::Size{500, 100},
       .66749,
       .33002,
       Step::thin,
       Step::thin,
       .85,
       made,
       "deepest pit to be expected over the whole place: 0.33 mm, at worst 0.67 mm (97.5 % bound; "
       "extreme values of 5 patches)"},
      {"only the bound is past the limit",
       shallow,
       {},
       survey::Size{500, 100},
       .83374,
       .66501,
       Step::bloom,
       Step::thin,
       .85,
       made,
       "deepest pit to be expected over the whole place: 0.17 mm, at worst 0.34 mm (97.5 % bound; "
       "extreme values of 5 patches)"},
      {"a single pit is deeper than the bound",
       shallow,
       {.4},
       survey::Size{500, 100},
       .6,
       .6,
       Step::thin,
       Step::thin,
       .85,
       made,
       "deepest pit to be expected over the whole place: 0.17 mm, at worst 0.34 mm (97.5 % bound; "
       "extreme values of 5 patches)"},
      {"all of it read",
       shallow,
       {},
       survey::Size{250, 50},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       all_read,
       ""},
      {"too little of it read",
       shallow,
       {},
       survey::Size{600, 1000},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       small_share,
       only_seen + "under 3 % of the place was read"},
      {"too large",
       std::vector<double>(20, .15),
       {},
       survey::Size{1300, 1000},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       large_area,
       only_seen + "the place is larger than 500 patches"},
      {"few patches",
       {.1, .15},
       {},
       survey::Size{500, 100},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       few_patches,
       only_seen + "2 patches read, 5 are needed"},
      {"many patches",
       std::vector<double>(21, .15),
       {},
       survey::Size{500, 500},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       many_patches,
       only_seen + "21 patches read, the method takes 20 at most"},
      {"no scatter",
       std::vector<double>(5, .15),
       {},
       survey::Size{500, 100},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       no_scatter,
       only_seen + "all patches have the same depth"},
      {"no size",
       shallow,
       {},
       {},
       .85,
       .85,
       Step::bloom,
       Step::bloom,
       .95,
       {},
       only_seen + "the place has no size"},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    survey::Spot found = spot("a", Rust::surface);
    found.pits = survey::PitPatches{{50, 50}, c.deepest_mm};
    found.pit_mm = c.pit_mm;
    found.size = c.size;
    const Spot got = weighed(found);
    ASSERT_TRUE(got.metal.pit_left && got.metal.pit_left_low);
    EXPECT_NEAR(*got.metal.pit_left, c.left, 2e-5);
    EXPECT_NEAR(*got.metal.pit_left_low, c.left_low, 5e-5);
    EXPECT_EQ(got.step, c.step);
    EXPECT_EQ(got.step_low, c.step_low);
    EXPECT_NEAR(got.metal.weighed.low, c.weighed_low, 1e-12);
    EXPECT_EQ(got.metal.pits_over_place, c.over_place);
    EXPECT_EQ(got.metal.remarks,
              c.remark.empty() ? std::vector<std::string>{} : std::vector<std::string>{c.remark});
  }
}

}  // namespace
}  // namespace tinworm::weighing
