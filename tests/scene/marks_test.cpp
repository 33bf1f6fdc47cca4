// Names, repairs' edges and the search for free space.
#include <gtest/gtest.h>

#include "scene/free_space.hpp"
#include "scene/naming.hpp"
#include "scene/repair_edge.hpp"

namespace tinworm::scene {
namespace {

TEST(Naming, NumberList) {
  EXPECT_EQ(number_list({}), "");
  EXPECT_EQ(number_list({71}), "71");
  EXPECT_EQ(number_list({72, 71}), "71, 72");
  EXPECT_EQ(number_list({53, 51, 52, 61, 52}), "51\u201353, 61");
}

TEST(Naming, StepsAreSpansWhereOnlyLookedAt) {
  weighing::Spot spot;
  spot.step = weighing::Step::thin;
  spot.step_low = weighing::Step::weak;  // at the low end of the metal left
  spot.step_high = weighing::Step::bloom;
  spot.evidence = weighing::Evidence::looked;
  EXPECT_EQ(step_words(spot), "bloom to weak");
  spot.evidence = weighing::Evidence::measured;
  EXPECT_EQ(step_words(spot), "thin");
}

TEST(Naming, MetalInWords) {
  weighing::Spot spot;
  spot.step = weighing::Step::thin;
  spot.metal.weighed = {0.722, 0.804, 0.876};
  spot.metal.kind = weighing::SpanKind::interval;
  spot.evidence = weighing::Evidence::measured;
  EXPECT_EQ(metal_words(spot), "80 % of the metal left (72 to 88), measured");
  spot.metal.baseline_from = weighing::BaselineFrom::plan_sheet;
  EXPECT_EQ(metal_words(spot), "80 % of the metal left (72 to 88), measured, the sheet assumed");
  spot.metal.kind = weighing::SpanKind::envelope;
  spot.evidence = weighing::Evidence::looked;
  EXPECT_EQ(metal_words(spot), "72 to 88 % of the metal left, judged by eye");
  spot.step = weighing::Step::holed;
  spot.evidence = weighing::Evidence::felt;
  EXPECT_EQ(metal_words(spot), "judged by hand");
}

TEST(RepairEdge, TheLeastReliableCounts) {
  weighing::Repair good, bad, unknown;
  good.reliable = true;
  bad.reliable = false;
  weighing::Zone zone;
  EXPECT_EQ(repair_edge_of(zone), RepairEdge::none);
  zone.repairs = {good};
  EXPECT_EQ(repair_edge_of(zone), RepairEdge::stitches);
  zone.repairs = {unknown, good};
  EXPECT_EQ(repair_edge_of(zone), RepairEdge::dash_and_dot);
  zone.repairs = {good, bad, unknown};
  EXPECT_EQ(repair_edge_of(zone), RepairEdge::wave);
}

TEST(RepairEdge, TheWaveRunsInsideTheZone) {
  const std::vector<Polyline> zone{polyline(Area{10, 10, 30, 20})};
  const Item edge = repair_edge(RepairEdge::wave, zone);
  const auto& wave = std::get<Clipped>(edge).within[0].lines[0].points;
  ASSERT_GT(wave.size(), 100U);
  for (const At at : wave) EXPECT_TRUE((Area{10, 10, 30, 20}.grown(1e-9).contains(at)));
}

TEST(FreeSpace, KnowsWhatIsDrawnAndWritten) {
  FreeSpace space({0, 0, 100, 80});
  const Area box{40, 30, 8, 4};
  EXPECT_TRUE(space.blank(box));
  space.trace({segment({0, 32}, {100, 32})});
  EXPECT_FALSE(space.blank(box));
  EXPECT_TRUE(space.uncovered(box));
  space.cover({polyline(Area{44, 20, 30, 30})});
  EXPECT_FALSE(space.uncovered(box));
  EXPECT_TRUE(space.unwritten(box));
  space.write({47, 33, 5, 5});
  EXPECT_FALSE(space.unwritten(box));
  EXPECT_FALSE(space.unwritten({97, 70, 8, 4})) << "beyond the drawing";
}

TEST(FreeSpace, CountsCrossings) {
  FreeSpace space({0, 0, 100, 80});
  space.lead({10, 10}, {30, 30});
  EXPECT_EQ(space.crossings({10, 30}, {30, 10}, {}), 1);
  EXPECT_EQ(space.crossings({10, 30}, {12, 60}, {}), 0);
  space.write({18, 26, 4, 4});
  EXPECT_EQ(space.crossings({20, 20}, {20, 50}, {}), FreeSpace::never + 0);
  EXPECT_EQ(space.crossings({20, 20}, {20, 50}, {18, 26, 4, 4}), 0) << "its own words";
  EXPECT_TRUE(space.leader_crosses({15, 15, 4, 4}));
  EXPECT_FALSE(space.leader_crosses({40, 40, 4, 4}));
}

TEST(FreeSpace, TellsHowFarALineRunsOverZones) {
  FreeSpace space({0, 0, 100, 80});
  space.cover({polyline(Area{10, 10, 20, 20})});
  space.trace({segment({0, 60}, {100, 60})});
  const struct {
    At from, to;
    double over_mm;
  } cases[] = {{{0, 20}, {60, 20}, 20},   {{60, 20}, {0, 20}, 20},  {{0, 50}, {60, 50}, 0},
               {{20, 40}, {20, 70}, 0},   {{12, 20}, {28, 20}, 16}, {{20, 20}, {20, 20}, 0},
               {{-50, 20}, {150, 20}, 20}};
  for (const auto& [from, to, over_mm] : cases)
    EXPECT_NEAR(space.over_zones_mm(from, to), over_mm, 1) << from.x_mm << " to " << to.x_mm;
}

}  // namespace
}  // namespace tinworm::scene
