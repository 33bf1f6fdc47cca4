// A saloon typed from pencil notes by someone who had read README and --help alone: inches and
// fractions, remarks between commas, several holes, a film off the scale. Each fact of the notes is
// where it counts.
#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

#include "paths.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::survey {
namespace {

const Survey& saloon() {
  static const Survey survey = [] {
    verbs::PlanShelf plans("");
    const auto loaded =
        verbs::load_survey(source_folder() + "/tests/cases/good/saloon-from-notes.yaml", plans);
    if (!loaded.survey) throw std::runtime_error(loaded.mistakes);
    return *loaded.survey;
  }();
  return survey;
}

const Zone& zone(int number) {
  return saloon().zones.at(number);
}

const Spot& spot(int number, const std::string& name) {
  const auto& found = zone(number).found;
  const auto at = std::ranges::find(found, name, &Spot::name);
  if (at == found.end()) throw std::runtime_error(fmt::format("no {} in {}", name, number));
  return *at;
}

std::size_t photos(int number, const std::string& name) {
  return spot(number, name).photos.size();
}

TEST(Notes, KeepEveryHole) {
  struct Holes {
    int zone;
    const char* spot;
    std::size_t count;
    double largest_mm, least_mm;
  };
  const Holes all[] = {
      {10, "lower lip", 2, 9.525, 6.35},
      {43, "bowl", 5, 22, 11},
      {44, "bowl", 2, 6, 3},
      {15, "tray", 1, 60, 60},
      {16, "left lower corner", 7, 2, 1},
      {59, "foot", 2, 35, 10},
      {55, "lower edge", 4, 40, 8},
      {57, "rear", 1, 35, 35},
      {66, "heel mat", 3, 25, 12.7},
      {81, "over axle", 1, 50.8, 50.8},
      {77, "lip", 6, 18, 9},
      {78, "inner lip", 2, 8, 8},
      {28, "bowl", 4, 10, 5},
      {29, "lower edge", 3, 2, 1},
      {26, "right corner", 1, 25, 25},
  };
  for (const Holes& each : all) {
    SCOPED_TRACE(fmt::format("{} {}", each.zone, each.spot));
    const Spot& found = spot(each.zone, each.spot);
    ASSERT_TRUE(found.hole);
    EXPECT_EQ(1 + found.other_holes.size(), each.count);
    EXPECT_NEAR(found.hole->along_mm, each.largest_mm, 1e-9);
    const Size& least = found.other_holes.empty() ? *found.hole : found.other_holes.back();
    EXPECT_NEAR(least.along_mm, each.least_mm, 1e-9);
  }
}

TEST(Notes, KeepEveryReading) {
  using Readings = std::vector<double>;
  const std::tuple<int, const char*, Readings> all[] = {
      {12, "slam panel", {.92, .90, .93}},
      {12, "underneath", {.98}},
      {45, "under battery", {.55, .6}},
      {50, "scraped spot", {1.35}},
      {51, "at drain", {1.22}},
      {51, "rear end", {.95, .97, .92}},
      {66, "heel mat", {.6}},
      {73, "footwell", {.88, .90, .86}},
      {67, "sill end", {.7}},
      {68, "sill end", {1.2}},
      {80, "hanger", {2.0, 2.1, 2.0, 2.3, 1.9}},
      {27, "left strap", {1.0}},
  };
  for (const auto& [number, name, readings] : all)
    EXPECT_EQ(spot(number, name).metal_mm, readings) << number << " " << name;
  const Readings& thou = spot(48, "plate").metal_mm;
  ASSERT_EQ(thou.size(), 3u);
  EXPECT_NEAR(thou[0], 46 * .0254, 1e-9);
  EXPECT_EQ(zone(80).reference_mm, Readings{2.6});
  EXPECT_EQ(zone(45).sheet_mm, .9);
}

TEST(Notes, KeepEveryFilm) {
  struct Films {
    int zone;
    std::vector<double> um;
    bool off_scale = false;
  };
  const Films all[] = {
      {41, {180, 240, 900, 1600}}, {42, {120, 150}}, {50, {2500, 3000}},
      {60, {600, 2000}, true},     {52, {130, 170}}, {92, {90, 110}},
      {97, {1100, 2000}, true},    {98, {140, 200}}, {19, {100, 120}},
  };
  for (const Films& each : all) {
    EXPECT_EQ(zone(each.zone).film_um, each.um) << each.zone;
    EXPECT_EQ(zone(each.zone).film_off_scale, each.off_scale) << each.zone;
  }
}

TEST(Notes, KeepWhatHandAndToolsSaid) {
  EXPECT_EQ(spot(57, "rear").hand, Hand::gives);
  EXPECT_EQ(spot(55, "lower edge").probe, Probe::goes_in);
  EXPECT_EQ(spot(55, "lower edge").magnet, Magnet::weak);
  EXPECT_EQ(spot(41, "rear bottom").magnet, Magnet::weak);
  EXPECT_EQ(spot(60, "foot").tap, Tap::dull);
  EXPECT_EQ(spot(12, "underneath").tap, Tap::rings);
  EXPECT_EQ(spot(46, "top rail").tap, Tap::rings);
  EXPECT_NEAR(spot(47, "plate").crack_mm.value(), 38.1, 1e-9);
  EXPECT_NEAR(spot(57, "front").crack_mm.value(), 50.8, 1e-9);
  EXPECT_EQ(spot(20, "handbrake bracket").crack_mm, 15);
  EXPECT_EQ(spot(84, "mounting").crack_mm, 10);
  EXPECT_TRUE(spot(41, "rear bottom").at_station);
  EXPECT_EQ(spot(67, "sill end").rust, Rust::hole);
  EXPECT_EQ(zone(13).drains, Drains::blocked);
  EXPECT_EQ(zone(17).drains, Drains::blocked);
  EXPECT_EQ(zone(51).drains, Drains::plugged);
  EXPECT_EQ(zone(52).drains, Drains::open);
}

TEST(Notes, KeepRepairsAndPhotos) {
  const std::pair<int, RepairKind> all[] = {
      {47, RepairKind::brazed},    {49, RepairKind::plated_over}, {51, RepairKind::plated_over},
      {92, RepairKind::new_panel}, {61, RepairKind::riveted},     {79, RepairKind::plated_over},
      {95, RepairKind::let_in},
  };
  for (const auto& [number, kind] : all) EXPECT_EQ(zone(number).repairs.at(0).kind, kind) << number;
  EXPECT_EQ(zone(49).repairs[0].joint, Joint::stitch);
  EXPECT_EQ(zone(49).repairs[0].now, Now::poor_weld);
  EXPECT_EQ(zone(51).repairs[0].beneath, Beneath::over_rust);
  EXPECT_EQ(zone(61).repairs[0].now, Now::rusting);
  EXPECT_EQ(photos(10, "lower lip"), 2u);
  EXPECT_EQ(photos(15, "tray"), 3u);
  EXPECT_EQ(photos(47, "plate"), 3u);
  EXPECT_EQ(photos(55, "lower edge"), 4u);
  EXPECT_EQ(photos(67, "sill end"), 2u);
  EXPECT_EQ(spot(67, "sill end").photos[1].path, "photos/IMG_36.jpg");
  EXPECT_EQ(photos(77, "lip"), 3u);
}

// What was only tapped or never reached is not seen, and what a finger found there counts.
TEST(Notes, KeepWhatWasNotSeen) {
  EXPECT_EQ(saloon().seen.at(60).word, SeenWord::tap);
  EXPECT_EQ(saloon().seen.at(81).word, SeenWord::tap);
  EXPECT_EQ(saloon().seen.at(82).reason, "exhaust in the way");
  for (const int number : {21, 23, 89, 90})
    EXPECT_EQ(saloon().seen.at(number).word, SeenWord::hidden) << number;
  const weighing::Result result = weighing::weigh(saloon(), {});
  EXPECT_EQ(result.verdict, weighing::Verdict::keep_parked);
  EXPECT_EQ(result.zone(81)->step, weighing::Step::holed);
  EXPECT_EQ(result.zone(81)->seen_share, 0);
  EXPECT_TRUE(result.zone(60)->film->off_scale);
  ASSERT_EQ(saloon().gaps.size(), 6u);
  EXPECT_EQ(saloon().gaps[0].lift_mm, 2.5);
}

}  // namespace
}  // namespace tinworm::survey
