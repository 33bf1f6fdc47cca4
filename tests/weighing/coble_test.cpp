// output-samples/coble-2024.yaml worked by hand: a car full of trouble, half of its structure not
// seen. Step by step as on paper: metal left, nearness, damage, burden, coverage, verdict.
//
// Constants and their sources: near radius 300 mm (UK MOT inspection manual, cars, Appendix A
// section 2); repair limit .85 (US Army TB 9-2510-242-40); pit limit .70 (IMO 2011 ESP Code, Annex
// A Part B 8.2.1.3); a sheet given or of the plan +-10 and +-20 %, rectangular (common practice);
// 16 SWG .064 in (BS 3737:1964); uncertainty by JCGM 100:2008; Student t by z + (z^3 + z)/4n, z =
// 1.959964 (Abramowitz and Stegun 26.7.5, from memory): 1.96084 at 2711, 1.96006 at 24418 degrees
// of freedom. Envelopes, the knots of damage, weights, the exponent 6 and 80 % coverage: memory,
// this method's own. Places, extents and areas: the body plan.
//
// The gauge: two sets of readings. 1.02 .95 1.00 .98: mean .9875, squares .002675; 1.31 1.22 1.28:
// mean 1.27, squares .0042. With the prior, 5 of .04 mm: s2 = (.008 + .006875)/(5 + 3 + 2) =
// .0014875, s = .0385681 mm, 10 degrees of freedom. Its own standard uncertainty: .05 mm, assumed.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "paths.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

constexpr double s_mm = .0385681;
constexpr double gauge_mm = .05;
const double half_of_rectangle = 1 / std::sqrt(3.0);

const Result& coble() {
  static const Result result = [] {
    verbs::PlanShelf plans("");
    const auto loaded =
        verbs::load_survey(source_folder() + "/output-samples/coble-2024.yaml", plans);
    if (!loaded.survey) throw std::runtime_error("the sample can't be read");
    return weigh(*loaded.survey, {});
  }();
  return result;
}

const Spot& spot(int zone, const std::string& name) {
  const auto& spots = coble().zone(zone)->spots;
  return *std::ranges::find(spots, name, &Spot::name);
}

void expect_judged(const Spot& spot, Span metal, Step step, Step worst, Step mildest) {
  EXPECT_NEAR(spot.metal.weighed.low, metal.low, 1e-12);
  EXPECT_NEAR(spot.metal.weighed.value, metal.value, 1e-12);
  EXPECT_NEAR(spot.metal.weighed.high, metal.high, 1e-12);
  EXPECT_EQ(spot.metal.kind, SpanKind::envelope);
  EXPECT_EQ(spot.step, step);
  EXPECT_EQ(spot.step_low, worst);
  EXPECT_EQ(spot.step_high, mildest);
}

void expect_near(const Spot& spot, Near near, const std::string& mount, double mm) {
  EXPECT_EQ(spot.near, near);
  EXPECT_EQ(spot.near_what, mount);
  EXPECT_NEAR(spot.near_mm, mm, .005);
}

void expect_weight(const Spot& spot, double low, double value, double high) {
  EXPECT_NEAR(spot.weight.low, low, 1e-6);
  EXPECT_NEAR(spot.weight.value, value, 1e-6);
  EXPECT_NEAR(spot.weight.high, high, 1e-6);
}

// Scale .50 .70 .90, and the probe goes in: no more than 0 .10 .30. Holed. The front spring eye
// stands on the hanger, so f = 1. Damage below .50: .75 + .25 (.50 - x)/.50: .85 at .30, .95 at
// .10, 1 at 0.
TEST(Coble, SpringHangerLetsTheProbeIn) {
  const Spot& edge = spot(79, "lower edge");
  expect_judged(edge, {0, .10, .30}, Step::holed, Step::holed, Step::holed);
  EXPECT_EQ(edge.evidence, Evidence::felt);
  EXPECT_EQ(edge.near, Near::on_mount);
  EXPECT_EQ(edge.near_what, "front spring eye");
  expect_weight(edge, .85, .95, 1);
  EXPECT_EQ(edge.rank, 1);
}

// Seam .50 .75 .92, crunches: no more than .15 .35 .50; weak, at the high end on the limit and yet
// no better, as it gives. 400 x 60 at (1940, -380, 225): along the zone, across the car, y -580 to
// -180; the pan is 300 mm deep in x (1930 to 2230) and 255 in z, so 60 in x, 1910 to 1970. Spring
// eye (1990, -490, 290): 20, 0 and 65 mm off: 68.01. It stands on the hanger, which is welded to
// the pan: into. Damage .75 at .50, .825 at .35, .925 at .15; near, f = 1.
TEST(Coble, SeatPanSeamCrunchesBesideTheSpringEye) {
  const Spot& seam = spot(21, "left lower seam");
  expect_judged(seam, {.15, .35, .50}, Step::weak, Step::weak, Step::weak);
  expect_near(seam, Near::into_mount, "front spring eye", std::sqrt(20 * 20 + 65 * 65.0));
  expect_weight(seam, .75, .825, .925);
}

// The same three figures by three other ways; metal that gives is weak at either end.
// 47, pitting, gives: the strut stands on it. 73, poultice, gives, 220 x 120 at (1890, -560, 215):
// y -620 to -500; spring eye 0, 10, 75: 75.66 mm. 52, poultice, crunches, 300 x 80 at (1960, 740,
// 220): the sill is taller than wide, so z 180 to 260 and x 1810 to 2110; right lower belt
// anchorage (1740, 690, 360): 70, 50, 100: 131.91 mm. The eye's load goes into the floor, the
// anchorage's into the sill.
TEST(Coble, ThreeMorePlacesAreWeakNearMounts) {
  const Spot& strut = spot(47, "plate outer edge");
  expect_judged(strut, {.15, .35, .50}, Step::weak, Step::weak, Step::weak);
  EXPECT_EQ(strut.near, Near::on_mount);
  const Spot& floor = spot(73, "rear corner");
  expect_judged(floor, {.15, .35, .50}, Step::weak, Step::weak, Step::weak);
  expect_near(floor, Near::into_mount, "front spring eye", std::sqrt(10 * 10 + 75 * 75.0));
  const Spot& sill = spot(52, "rear end");
  expect_judged(sill, {.15, .35, .50}, Step::weak, Step::weak, Step::weak);
  expect_near(sill, Near::into_mount, "lower belt anchorage",
              std::sqrt(70 * 70 + 50 * 50 + 100 * 100.0));
  for (const Spot* each : {&strut, &floor, &sill}) expect_weight(*each, .75, .825, .925);
}

// Holes near a mount, on local zones that count as main there: D = 1 at either end.
// Boot floor 90 x 60 at (3080, -640, 430): x 3035 to 3125, y -670 to -610; rear shackle (2970,
// -490, 345), whose load goes into the boot floor: 65, 120, 85: 160.78 mm; that it breaks beside
// the hole makes the hole no smaller. Its right corner, 200 x 150 at (3080, 640, 430), scale that
// gives: the towing eye (3150, 490, 400) is nearer, 80.78 mm, but its load goes elsewhere; right
// shackle (2970, 490, 345): 10, 75, 85: 113.80 mm, into. Rear wings, 45 x 30 at (2900, -720, 310):
// x to 2922.5, z to 325: 47.5, 230, 20: 235.70 mm; 20 x 20 right: 60, 230, 25: 239.01 mm.
TEST(Coble, HolesNearTheShacklesCountAsMain) {
  const struct {
    int zone;
    const char* name;
    Near near;
    double mm;
  } holes[] = {
      {26, "left corner", Near::into_mount, std::sqrt(65 * 65 + 120 * 120 + 85 * 85.0)},
      {95, "behind the wheel", Near::within_radius, std::sqrt(47.5 * 47.5 + 230 * 230 + 400)},
      {96, "behind the wheel", Near::within_radius, std::sqrt(3600 + 52900 + 625.0)}};
  for (const auto& each : holes) {
    const Spot& hole = spot(each.zone, each.name);
    expect_judged(hole, {0, 0, 0}, Step::holed, Step::holed, Step::holed);
    expect_near(hole, each.near, "rear shackle", each.mm);
    expect_weight(hole, 1, 1, 1);
    EXPECT_EQ(hole.counts, 1);
  }
  const Spot& corner = spot(26, "right corner");
  expect_judged(corner, {.15, .35, .50}, Step::weak, Step::weak, Step::weak);
  expect_near(corner, Near::into_mount, "rear shackle", std::sqrt(10 * 10 + 75 * 75 + 85 * 85.0));
}

// 16 SWG: .064 x 25.4 = 1.6256 mm. .9875/1.6256 = .607468, thin. u: readings .0385681/2/1.6256 =
// .011863, gauge .05/1.6256 = .030758 (the sheet wasn't read with it), sheet .607468 x .10/sqrt 3 =
// .035072: together .048133; 10 (.048133/.011863)^4 = 2711 degrees: +- .0944. The bump stop stands
// on the leg: f = 1, D = .30 + .45 (.85 - .607468)/.35 = .611827.
TEST(Coble, RearLegIsMeasuredThinAgainstAStatedSheet) {
  const Spot& axle = spot(81, "over the axle");
  const double metal = .9875 / 1.6256;
  const double u = std::sqrt(std::pow(s_mm / 2 / 1.6256, 2) + std::pow(gauge_mm / 1.6256, 2) +
                             std::pow(metal * .10 * half_of_rectangle, 2));
  EXPECT_NEAR(u, .048133, 1e-6);
  EXPECT_EQ(axle.metal.baseline_from, BaselineFrom::survey_sheet);
  EXPECT_NEAR(axle.metal.weighed.value, .607468, 1e-6);
  EXPECT_NEAR(axle.metal.weighed.low, metal - 1.96084 * u, 1e-5);
  EXPECT_NEAR(axle.metal.weighed.high, metal + 1.96084 * u, 1e-5);
  EXPECT_EQ(axle.step, Step::thin);
  EXPECT_EQ(axle.near, Near::on_mount);
  EXPECT_NEAR(axle.weight.value, .611827, 1e-6);
}

// Pitting, only looked at: .70 .85 .95; but a crack is past the limit whatever its metal, and where
// a mount's load goes through it weighs no more than .50, and is weak. 80 x 40 at (3150, -490,
// 400): the leg is 155 mm deep (z 325 to 480) and 100 wide, so x 3110 to 3190, z 380 to 420; rear
// shackle (2970, -490, 345): 140, 0, 35: 144.31 mm, into. D .75.
TEST(Coble, RearLegIsCrackedOnAMount) {
  const Spot& end = spot(81, "rear end");
  expect_judged(end, {.50, .50, .50}, Step::weak, Step::weak, Step::weak);
  expect_near(end, Near::into_mount, "rear shackle", std::sqrt(140 * 140 + 35 * 35.0));
  expect_weight(end, .75, .75, .75);
}

// 1.27 of the plan's 2.30 mm: .552174 as shown. The plan's sheet is assumed: even of the thinnest,
// .8 x 2.30 = 1.84, only 1.27/1.84 = .690217 is left, under the word's .85: that is the likely
// figure, thin. The low end is the reading's. u: .0385681/sqrt 3/2.3 = .009681, .05/2.3 = .021739,
// .552174 x .20/sqrt 3 = .063760: .068056; 24418 degrees: +- .1334, .4188, weak. Pit .9: (1.27 -
// .9)/2.3 = .160870, under .70: at most .85, where the word's high end is .95.
TEST(Coble, ShackleMountIsThinAgainstAnAssumedSheet) {
  const Spot& tube = spot(85, "tube");
  const double metal = 1.27 / 2.3;
  const double u =
      std::sqrt(std::pow(s_mm * half_of_rectangle / 2.3, 2) + std::pow(gauge_mm / 2.3, 2) +
                std::pow(metal * .20 * half_of_rectangle, 2));
  EXPECT_NEAR(u, .068056, 1e-6);
  EXPECT_EQ(tube.metal.baseline_from, BaselineFrom::plan_sheet);
  EXPECT_NEAR(tube.metal.shown.value, .552174, 1e-6);
  EXPECT_NEAR(tube.metal.weighed.value, .690217, 1e-6);
  EXPECT_NEAR(tube.metal.weighed.low, metal - 1.96006 * u, 1e-5);
  EXPECT_NEAR(tube.metal.weighed.high, .85, 1e-9);
  EXPECT_NEAR(*tube.metal.pit_left, .160870, 1e-6);
  EXPECT_EQ(tube.step, Step::thin);
  EXPECT_EQ(tube.step_low, Step::weak);
}

// Away from mounts a place weighs by its length inside its zone. Toe-board: hole of 60 mm round y
// -580, of which 55 within y -605 to -142: 55/463 = .118790, D = 1 (.4 + .6 x .118790) = .471274.
// Beside it the probe goes in, 0 .10 .30 over a place without size, a quarter more: f = .368790, .4
// + .6 f = .621274; D = .95 of that, .590210; .85 and 1 of it at the ends: these are more. 60 x 40
// of .09 m2 is 2.67 %, more than the 1 % of a place without size: Ri 4, grade 5. Front floor:
// breaks, 300 mm round x 750, 280 within 620 to 1290: 280/670 = .417910, .95 x .650746 = .618209.
// A-post foot: gives, 100 mm round z 370, 95 within 325 to 897: 95/572 = .166084, .825 x .499650 =
// .412211.
TEST(Coble, AwayFromMountsLengthCounts) {
  const Spot& corner = spot(61, "footwell corner");
  EXPECT_EQ(corner.near, Near::no);
  EXPECT_EQ(corner.step, Step::holed);
  EXPECT_NEAR(corner.share_of_length, 55.0 / 463 + .25, 1e-9);
  expect_weight(corner, .85 * .621274, .590210, .621274);
  EXPECT_NEAR(*coble().zone(61)->rusted_share, 2400 / 90000.0, 1e-9);
  EXPECT_EQ(coble().zone(61)->iso4628_3, 4);
  EXPECT_EQ(coble().zone(61)->astm_d610, 5);
  const Spot& footwell = spot(65, "footwell");
  EXPECT_EQ(footwell.near, Near::no);
  EXPECT_NEAR(footwell.weight.value, .618209, 1e-6);
  const Spot& foot = spot(59, "foot");
  EXPECT_EQ(foot.near, Near::no);
  EXPECT_NEAR(foot.weight.value, .412211, 1e-6);
}

// A plate over rust, a riveted sheet, a bonded bracket: metal 0 .50 .85 over all of their zones, D
// .30 .75 1. No mount stands on the sill or the floor, but the belt anchorage's load goes into the
// one, 10 mm from its top, and the handbrake's (1450, 0, 340) into the other: x to 1290, y to -142,
// z to 245: 160, 142, 95: 234 mm. A lapped sheet whose joint isn't recorded reaches only the high
// end, .50: D 0 0 .75.
TEST(Coble, RepairsThatCannotBeReliedOnWeighLikeRust) {
  for (const int zone : {51, 65}) {
    const Spot& repair = spot(zone, "repair 1");
    EXPECT_TRUE(repair.is_repair);
    expect_weight(repair, .30, .75, 1);
    EXPECT_EQ(repair.near, Near::into_mount);
  }
  const Zone& bracket = coble().zones.back();
  EXPECT_EQ(bracket.own, "own-a");
  expect_weight(bracket.spots.at(0), .30, .75, 1);
  EXPECT_EQ(bracket.spots.at(0).counts, .5);
  expect_weight(spot(52, "repair 1"), 0, 0, .75);
}

// Dull cuts to .50 .70 .85: bleed .40, blister .30 keep their least. Thin, but only judged: to be
// opened up, not past the limit by rule. 51's lies at (1960, -740, 220), no size: the spring eye is
// nearer, but its load goes elsewhere; belt anchorage (1740, -690, 360), into: 220, 50, 140:
// 265.52.
TEST(Coble, DullPlacesAreThinByJudgementOnly) {
  expect_judged(spot(16, "left lower corner"), {.40, .70, .85}, Step::thin, Step::weak,
                Step::pitted);
  expect_judged(spot(45, "top rail rear"), {.50, .70, .85}, Step::thin, Step::thin, Step::pitted);
  expect_judged(spot(71, "foot"), {.30, .70, .85}, Step::thin, Step::weak, Step::pitted);
  const Spot& sill = spot(51, "rear end");
  expect_judged(sill, {.30, .70, .85}, Step::thin, Step::weak, Step::pitted);
  expect_near(sill, Near::into_mount, "lower belt anchorage",
              std::sqrt(220 * 220 + 50 * 50 + 140 * 140.0));
  for (const int zone : {16, 45, 51, 71})
    EXPECT_FALSE(coble().zone(zone)->spots.front().by_measure_or_hand) << zone;
}

// Areas in m2 by the plan. Main, seen bare: .52 + .09 + .2192 + .2788 + .09 + .31 + .05 = 1.5580;
// coated: .62 + 2 (.50 + .20 + .34 + .18 + .52) + .26 + .32 = 4.68; 30 % of four of .24: .288; of
// 13.6857 in all 47.68 %. Measured: .31 + .05, 2.63 %. Local: .30 + .30 + .40 + half of 1.3517 +
// .4834 + .54 + .36 + 2 x 1.15 = 5.3592 of 7.4264: 72.16 %.
TEST(Coble, HalfOfTheStructureWasNotSeen) {
  EXPECT_NEAR(coble().main.area_share, (1.5580 + 4.68 + .288) / 13.6857, 2e-5);
  EXPECT_NEAR(coble().main.measured_share, .36 / 13.6857, 2e-5);
  EXPECT_NEAR(coble().local.area_share, 5.3592 / 7.4264, 2e-5);
}

// Of 53 main zones, 12 local and the bracket: 53 + 6 + .5 = 59.5. Under 80 % seen: no value. Low
// ends, unseen at 0, are D at the most metal; high ends D at the least.
TEST(Coble, StructureWeighsHeavyToVeryHeavy) {
  const auto p6 = [](double d) { return std::pow(d, 6); };
  const double tube_low = .552174 - 1.96006 * .068056;
  const double low = 3 * 1                // 26, 95, 96: holes near the shackles
                     + p6(.85)            // 79
                     + 5 * p6(.75)        // 21, 47, 52, 73; 53 by tap
                     + p6(.75)            // 81, cracked; over the axle it is better
                     + p6(.30)            // 85, at .85
                     + p6(.85 * .621274)  // 61: the probe goes in, .30
                     + p6(.85 * .650746)  // 65: breaks at .30, over .417910
                     + p6(.75 * .499650)  // 59
                     + 4 * p6(.30)        // 16, 45, 51, 71: at .85
                     + p6(.30 * .55)      // 55, dull under the tap
                     + .5 * p6(.30);      // own-a
  EXPECT_NEAR(coble().structure.low, std::pow(low / 59.5, 1 / 6.0), 1e-5);
  EXPECT_NEAR(coble().structure.low, .6504, 5e-5);

  // Nothing found: .4 of the damage at .85 through paint, .12; at .50 in part or inside, .30.
  const double quiet = 3 * p6(.12)          // 46, 77, 78
                       + 7 * p6(.30)        // 48, 75, 76, 87 to 90
                       + .5 * 4 * p6(.12)   // 11, 12, 28, 30
                       + .5 * 2 * p6(.30);  // 17, 19
  const double seen = 6 * 1                 // 26, 95, 96, 79; repairs of 51 and 65
                      + 4 * p6(.925)        // 21, 47, 52, 73
                      + p6(.75)             // 81
                      + p6(.75 + .25 * (.50 - tube_low) / .50)  // 85
                      + p6(.621274)                             // 61
                      + p6(.925 * .499650)                      // 59
                      + p6(.80)                                 // 16 at .40
                      + p6(.75)                                 // 45 at .50
                      + p6(.85)                                 // 71 at .30
                      + .5 * 1                                  // own-a
                      + quiet;
  // Seen: 24 main, 9 local, own-a: 29; and two by tap alone, the left sill membrane (53), which
  // crunched where the sill's section may be gone, 1, and the left inner sill (55), dull, .75 over
  // a quarter of its length: 31. Unseen zones are taken as bad as the worst of their pair, of what
  // hides them, and of that mean, .846. As bad as 1: 53 and 55 behind 51, 54 behind 96 (and 53's
  // pair), 66 beside 65, 67 behind 65, 80 beside 79, 82 and 86 behind 26. .925: 56 behind 52, 74
  // beside 73. .85: 72 beside 71. The mean: the other 18 main; the tunnel (20) on which the
  // handbrake stands as main, 25 and 27 with a half.
  const double counted = (seen + 1 + p6(.75 * .55)) / 31;
  const double unseen = 8 * 1 + 2 * p6(.925) + p6(.85) + (18 + 1 + 2 * .5) * counted;
  EXPECT_GT(std::pow(counted, 1 / 6.0), .80);
  EXPECT_LT(std::pow(counted, 1 / 6.0), .85);
  EXPECT_NEAR(coble().structure.high, std::pow((seen + unseen) / 59.5, 1 / 6.0), 1e-5);
  EXPECT_FALSE(coble().structure.value);
  EXPECT_FALSE(coble().shell.value);
  EXPECT_NEAR(coble().one_zone_gone, std::pow(1 / 59.5, 1 / 6.0), 1e-9);
}

// Weak, cracked or holed, by hand or hole or crack: on a mount 79 (D .95) and 47 (.825). Into one,
// within 200 mm: suspension first, of it the boot floor's hole (1), then .825 three times, the
// larger first, its right corner (200 x 150), 73 (220 x 120), 21 (400 x 60), then 81 (.75); the
// belts' 52 last. 53, 250 mm from its anchorage, and 95 and 96, only near the shackle, are to be
// mended.
TEST(Coble, IsNotToBeDriven) {
  EXPECT_EQ(coble().verdict, Verdict::keep_parked);
  EXPECT_EQ(coble().could_be, Verdict::keep_parked);
  EXPECT_TRUE(coble().open_up_first);
  using Place = std::pair<int, std::string>;
  std::vector<Place> places;
  for (const Reason& each : coble().reasons) places.emplace_back(each.zone, each.spot);
  EXPECT_EQ(places, (std::vector<Place>{{79, "lower edge"},
                                        {47, "plate outer edge"},
                                        {26, "left corner"},
                                        {26, "right corner"},
                                        {73, "rear corner"},
                                        {21, "left lower seam"},
                                        {81, "rear end"},
                                        {52, "rear end"}}));
}

// To open up: the 29 main zones not seen, and the tunnel (20), on which the handbrake stands; parts
// that such a mount stands on, seen only through their coat (16 45 46 47 48 71); places only judged
// (16 45 51 71 95); insides not seen beside a thin place or under such a mount (47 48 51 52 59 71
// 79 81 85): of 75 76 and 87 to 90 neither is known; coats over 1000 um (16 51 95 96). Where no
// such mount's load goes it could only become mend: 59, and the jacking points.
TEST(Coble, IsToBeOpenedUp) {
  std::set<int> expected = {14, 18, 22, 23, 24, 49, 50, 53, 54, 55, 56, 57, 58, 60, 62,
                            63, 64, 66, 67, 68, 69, 70, 72, 74, 80, 82, 83, 84, 86};
  EXPECT_EQ(expected.size(), 29u);
  expected.insert({16, 45, 51, 71, 95});
  expected.insert({20, 46});
  expected.insert({47, 48, 51, 52, 59, 71, 79, 81, 85});
  expected.insert(96);
  std::set<int> found;
  for (const OpenUp& each : coble().open_up) found.insert(each.zone);
  EXPECT_EQ(found, expected);
  const auto could_become = [](int zone) {
    return std::ranges::find(coble().open_up, zone, &OpenUp::zone)->could_become;
  };
  for (const int zone : {57, 58, 59, 60}) EXPECT_EQ(could_become(zone), Verdict::mend) << zone;
  for (const int zone : {14, 49, 69, 80}) EXPECT_EQ(could_become(zone), Verdict::keep_parked);
}

// No box was seen inside as a whole: none has a figure.
TEST(Coble, WithholdsEveryBox) {
  EXPECT_EQ(coble().boxes.size(), 10u);
  for (const BoxResult& box : coble().boxes) {
    EXPECT_FALSE(box.twist_kept || box.bending_kept) << box.name;
    EXPECT_NE(box.withheld, "") << box.name;
  }
}

}  // namespace
}  // namespace tinworm::weighing
