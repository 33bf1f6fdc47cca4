// Five zones of output-samples/wherry-2025.yaml worked by hand, step by step to the verdict.
//
// Constants and their sources: near radius 300 mm (UK MOT inspection manual, cars, Appendix A
// section 2); repair limit .85 (US Army TB 9-2510-242-40); pit limit .70 (IMO 2011 ESP Code, Annex
// A Part B 8.2.1.3); uncertainty by JCGM 100:2008; Student t by SciPy 1.10 (1.96625 at 379, 1.97233
// at 193, 1.97880 at 127 degrees of freedom); D610 and ISO 4628-3 steps as in tests/outside.
// Envelopes, the knots of damage and all weights: memory, this method's own.
//
// The gauge: 55 sets of readings and references with 97 degrees of freedom and a sum of squares
// about their means of .0177167 mm2. With the prior, 5 of .04 mm: s2 = (.008 + .0177167)/102 =
// .000252124, s = .0158784 mm. Its own standard uncertainty: .05 mm.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "paths.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

constexpr double s_mm = .0158784;
constexpr double gauge_mm = .05;

const Result& wherry() {
  static const Result result = [] {
    verbs::PlanShelf plans("");
    const auto loaded =
        verbs::load_survey(source_folder() + "/output-samples/wherry-2025.yaml", plans);
    if (!loaded.survey) throw std::runtime_error("the sample can't be read");
    return weigh(*loaded.survey, {});
  }();
  return result;
}

const Spot& spot(int zone, const std::string& name) {
  const auto& spots = wherry().zone(zone)->spots;
  return *std::ranges::find(spots, name, &Spot::name);
}

double standard(double metal, double t0_mm, int readings, int references) {
  const double mean = s_mm / std::sqrt(readings) / t0_mm;
  const double reference = metal * s_mm / std::sqrt(references) / t0_mm;
  const double gauge = gauge_mm * (1 - metal) / t0_mm;
  return std::sqrt(mean * mean + reference * reference + gauge * gauge);
}

void expect_interval(const Spot& spot, double metal, double u, double t) {
  EXPECT_EQ(spot.evidence, Evidence::measured);
  EXPECT_NEAR(spot.metal.weighed.value, metal, 1e-6);
  EXPECT_NEAR(spot.metal.weighed.low, metal - t * u, 1e-5);
  EXPECT_NEAR(spot.metal.weighed.high, metal + t * u, 1e-5);
}

// .88 .86 .91 .87: mean .88; reference 1.12 1.10 1.11: 1.11; metal left .792793, thin.
// u: .007152 readings, .006548 reference, together .009697; .009334 gauge: .013459 in all. The
// scatter is one estimate: 102 (.013459/.009697)^4 = 379 degrees: .7663 to .8193. Deepest pit .31:
// (.88 - .31)/1.11 = .5135 of the sheet, under .70: at least thin, as it is. Place: 180 x 60 at
// (1960, -740, 220); lower belt anchorage at (1740, -690, 360): 130, 50 and 110 mm off, 177.5 mm in
// space. It stands on the pillar and its load goes into the sill: into, so f = 1. To be mended, as
// the two before it: 71 on that anchorage, 73 into the spring eye, suspension before belts. 53
// joins 51 and so comes after it, and takes less. Damage .30 + .45 (.85 - .792793)/.35 = .373552 =
// D.
TEST(Wherry, OuterSillLeftIsThinNearABeltAnchorage) {
  const Spot& end = spot(51, "rear end");
  expect_interval(end, .792793, standard(.792793, 1.11, 4, 3), 1.96625);
  EXPECT_NEAR(end.metal.weighed.low, .7663, 5e-5);
  EXPECT_NEAR(*end.metal.pit_left, .5135, 5e-5);
  EXPECT_EQ(end.near, Near::into_mount);
  EXPECT_EQ(end.near_what, "lower belt anchorage");
  EXPECT_NEAR(end.near_mm, 177.48, .01);
  EXPECT_NEAR(end.weight.value, .373552, 1e-6);
  EXPECT_EQ(end.step, Step::thin);
  EXPECT_EQ(end.rank, 3);
}

// .79 .77 .80 .78: mean .785; reference .91 .90 .92: .91; metal left .862637, pitted; u .014443.
// Damage .10 + .20 (.95 - .862637)/.10 = .274725. No mount within 300 mm; 200 of the 670 mm from
// x = 620 to 1290: f = .298507, D = .274725 (.4 + .6 x .298507) = .159095.
TEST(Wherry, FrontFloorLeftIsPittedOverThreeTenthsOfItsLength) {
  const Spot& footwell = spot(65, "footwell");
  expect_interval(footwell, .862637, standard(.862637, .91, 4, 3), 1.97233);
  EXPECT_EQ(footwell.step, Step::pitted);
  EXPECT_EQ(footwell.near, Near::no);
  EXPECT_NEAR(footwell.share_of_length, 200.0 / 670, 1e-9);
  EXPECT_NEAR(footwell.weight.value, .159095, 1e-6);
}

// 1.83 1.80 1.85: mean 1.826667; reference 2.01 2.02: 2.015; metal left .906534, pitted; u .007183.
// The spring eye stands on it: f = 1, D = damage = .10 + .20 (.95 - .906534)/.10 = .186931.
TEST(Wherry, FrontSpringHangerLeftIsPittedWhereTheSpringStands) {
  const Spot& edge = spot(79, "lower edge");
  expect_interval(edge, .906534, standard(.906534, 2.015, 3, 2), 1.97880);
  EXPECT_EQ(edge.step, Step::pitted);
  EXPECT_EQ(edge.near, Near::on_mount);
  EXPECT_NEAR(edge.weight.value, .186931, 1e-6);
}

// Scale, firm: .50 .70 .90 and firm raises nothing; thin by hand alone, so not past the limit by
// rule. Damage .30 + .45 x .15/.35 = .492857; 200 of 1725 mm across: f = .115942;
// D = .492857 x .469565 = .231429; a local zone counts half.
TEST(Wherry, ScuttleIsJudgedThinAndToBeOpenedUp) {
  const Spot& end = spot(17, "left end");
  EXPECT_EQ(end.evidence, Evidence::felt);
  EXPECT_EQ(end.metal.weighed, (Span{.50, .70, .90}));
  EXPECT_NEAR(end.weight.value, .231429, 1e-6);
  EXPECT_EQ(end.counts, .5);
  EXPECT_FALSE(end.by_measure_or_hand);
  const auto open = std::ranges::find(wherry().open_up, 17, &OpenUp::zone);
  ASSERT_NE(open, wherry().open_up.end());
}

// Pitting, firm: .70 .85 .95, on the limit, so pitted. Pits .15 and .20 in a plan's .80 mm: .75
// left, over .70: no more than a note. Within 300 mm of the rear shackle, whose load goes into the
// boot floor: f = 1, counts as main, D = .30.
TEST(Wherry, BootFloorIsPittedNearTheShackle) {
  const Spot& corner = spot(26, "left corner");
  EXPECT_EQ(corner.step, Step::pitted);
  EXPECT_NEAR(*corner.metal.pit_left, .75, 1e-12);
  EXPECT_EQ(corner.near, Near::into_mount);
  EXPECT_EQ(corner.counts, 1);
  EXPECT_NEAR(corner.weight.value, .30, 1e-12);
}

// Measured thin on main zones: 73, into the spring eye, then 51 and 53, into the belt anchorage;
// none weak, cracked or holed: to be mended. The belt anchorages 69 and 70 are main, carry a mount
// and weren't seen: it could be keep-parked.
TEST(Wherry, ComesToRepair) {
  EXPECT_EQ(wherry().verdict, Verdict::mend);
  EXPECT_EQ(wherry().could_be, Verdict::keep_parked);
  EXPECT_TRUE(wherry().open_up_first);
  std::vector<int> zones;
  for (const Reason& each : wherry().reasons)
    if (each.rule == "past-limit") zones.push_back(each.zone);
  EXPECT_EQ(zones, (std::vector<int>{73, 51, 53}));
}

}  // namespace
}  // namespace tinworm::weighing
