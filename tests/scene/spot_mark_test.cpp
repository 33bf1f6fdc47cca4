#include "scene/spot_mark.hpp"

#include <gtest/gtest.h>

#include "scene/fixture.hpp"

namespace tinworm::scene {
namespace {

using survey::Rust;

// What the spots of a survey with one change leave on the sheets: shapes of the layer, and whether
// the key explains a cross.
struct Marks {
  std::size_t shapes = 0;
  bool cross = false;
};

Marks marks(const std::function<void(survey::Survey&)>& change) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  change(survey);
  Marks all;
  for (const Page& page : fixture::drawn(fixture::weighed(survey))) {
    if (const Layer* layer = fixture::layer(page, "spots")) all.shapes += layer->items.size();
    all.cross |= fixture::said(page, Says::legend).find("cross: measured") != std::string::npos;
  }
  return all;
}

survey::Spot station(std::vector<double> metal_mm) {
  survey::Spot spot = fixture::spot("middle", Rust::none, {1235, -745, 215}, {10, 10});
  spot.metal_mm = std::move(metal_mm);
  return spot;
}

survey::Repair repair(std::optional<survey::Joint> joint) {
  survey::Repair made;
  made.kind = survey::RepairKind::let_in;
  made.joint = joint;
  return made;
}

// A cross says "measured, metal whole there": nothing else may draw one.
TEST(SpotMark, ACrossStandsOnlyWhereMetalWasMeasured) {
  const Marks measured = marks([](auto& s) {
    s.zones[51].reference_mm = {1.1, 1.1};
    s.zones[51].found = {station({1.1, 1.09})};
  });
  EXPECT_TRUE(measured.cross);
  EXPECT_GT(measured.shapes, 0);
  const Marks tapped = marks([](auto& s) {
    s.zones[51].found = {station({})};
    s.zones[51].found[0].tap = survey::Tap::rings;
  });
  EXPECT_FALSE(tapped.cross);
  EXPECT_EQ(tapped.shapes, 0);
  const Marks not_known = marks([](auto& s) { s.zones[51].repairs = {repair({})}; });
  EXPECT_FALSE(not_known.cross);
  EXPECT_EQ(not_known.shapes, 0);
}

TEST(SpotMark, ARepairHasNoSpotOfItsOwn) {
  EXPECT_EQ(marks([](auto& s) { s.zones[51].repairs = {repair(survey::Joint::stitch)}; }).shapes,
            0);
}

// The rear bottom corner of the wing lies behind what the front view shows of the wing.
TEST(SpotMark, NoMarkStandsInTheAir) {
  const auto wing = [](survey::Survey& s) {
    s.zones[41].found = {fixture::spot("rear bottom", Rust::blister, {560, -750, 260}, {90, 60})};
  };
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  wing(survey);
  // Left and top, each a halo, a fill and its texture, an edge; the front view leaves it to them.
  const std::size_t in_two_views = marks(wing).shapes;
  survey.zones[41].found[0].at = {-560, -640, 700};  // by the lamp: the front view shows that too
  const std::size_t in_three_views =
      marks([&](survey::Survey& s) { s.zones[41] = survey.zones[41]; }).shapes;
  EXPECT_GT(in_two_views, 0);
  EXPECT_GT(in_three_views, in_two_views);
}

}  // namespace
}  // namespace tinworm::scene
