#include "survey/reader.hpp"
#include "paths.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bad_cases.hpp"
#include "survey/small_plan.hpp"

namespace tinworm::survey {
namespace {

using testing::ElementsAre;

Survey good(const std::string& name) {
  const std::string source =
      file_text(std::filesystem::path(source_folder()) / "tests/cases/good" / (name + ".yaml"));
  Reading reading = read_with_small_plan(source);
  EXPECT_EQ(yaml::to_text(reading.problems, name, source), "");
  return reading.survey.value_or(Survey{});
}

TEST(Reader, TakesTheCarTheVisitAndTheRest) {
  const Survey survey = good("wherry-2025");
  EXPECT_EQ(survey.body_text, "two-door-saloon 1");
  ASSERT_NE(survey.body, nullptr);
  EXPECT_EQ(survey.body->name, "two-door-saloon");
  EXPECT_EQ(survey.units, quantity::Units::mm);
  EXPECT_EQ(survey.car.name, "Wherry 1200");
  EXPECT_EQ(survey.car.built, 1967);
  EXPECT_NEAR(survey.car.odometer_km.value(), 98491.8528, 1e-6);
  EXPECT_EQ(survey.car.chassis_number, "W12-004417");
  EXPECT_EQ(survey.car.registration, "AB 12 67");
  EXPECT_EQ(survey.car.owner, "A. Marsh");
  EXPECT_EQ(survey.visit.date, (PartialDate{2025, 4, 12}));
  EXPECT_EQ(survey.visit.reason, Reason::purchase);
  EXPECT_EQ(survey.visit.by, "B. Fenn");
  EXPECT_EQ(survey.visit.interest, "none");
  EXPECT_EQ(survey.visit.place, "lift at the village garage");
  EXPECT_THAT(survey.visit.leave, ElementsAre("carpets", "underseal", "probe"));
  EXPECT_EQ(survey.kept, (Kept{Use::all_weather, Air::c4, PartialDate{2023, 9, 0}}));
  EXPECT_EQ(survey.gauge, (MetalGauge{"", 0.05, Coating::removed, false}));
  EXPECT_EQ(survey.photos, (PhotoFolder{"photos", "IMG_{}.jpg"}));
  ASSERT_EQ(survey.gaps.size(), 1u);
  EXPECT_EQ(survey.gaps[0].where, "left door rear edge");
  EXPECT_EQ(survey.gaps[0].wheels_mm, 4.5);
  EXPECT_EQ(survey.gaps[0].lift_mm, 3.0);
  ASSERT_EQ(survey.also.size(), 3u);
  EXPECT_EQ(survey.also[0].what, "tyres");
  EXPECT_EQ(survey.also[0].code, "0301");
  EXPECT_EQ(survey.also[0].say, "sidewalls uncracked");
  EXPECT_EQ(std::get<When>(survey.also[0].when.value()), When::next_survey);
  EXPECT_EQ(std::get<When>(survey.also[1].when.value()), When::before_use);
  EXPECT_EQ(std::get<PartialDate>(survey.also[2].when.value()), (PartialDate{2025, 10, 0}));
  EXPECT_EQ(survey.price.asked, (Money{9500, "EUR"}));
  EXPECT_EQ(survey.price.sound, (Money{14000, "EUR"}));
}

TEST(Reader, TakesHowEachZoneWasSeen) {
  const Survey survey = good("wherry-2025");
  struct {
    int zone;
    SeenWord word;
    double share;
    std::string reason;
  } const cases[] = {
      {51, SeenWord::bare, 1, ""},
      {58, SeenWord::bare, 1, ""},
      {61, SeenWord::bare, 1, ""},
      {41, SeenWord::coated, 1, ""},
      {70, SeenWord::coated, 1, ""},
      {71, SeenWord::hidden, 0, "carpet glued down"},
      {72, SeenWord::hidden, 0, "carpet glued down"},
      {33, SeenWord::hidden, 0, "spare wheel in place"},
      {13, SeenWord::part, 0.6, ""},
      {18, SeenWord::not_fitted, 0, ""},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.zone);
    const Seen seen = survey.seen.at(c.zone);
    EXPECT_EQ(seen.word, c.word);
    EXPECT_DOUBLE_EQ(seen.share, c.share);
    EXPECT_EQ(seen.reason, c.reason);
  }
  EXPECT_EQ(survey.seen.count(14), 0u) << "named nowhere";
  EXPECT_EQ(survey.seen.count(59), 0u) << "no zone of the body";
  EXPECT_EQ(survey.seen.at(71).place, (Place{27, 12}));
  EXPECT_EQ(survey.seen.at(72).place, (Place{27, 15}));
}

TEST(Reader, TakesZonesInTheOrderOfTheFile) {
  const Survey survey = good("wherry-2025");
  EXPECT_THAT(survey.zone_order, ElementsAre(51, 13));
  const Zone& sill = survey.zones.at(51);
  EXPECT_EQ(sill.inside, Inside::scoped);
  EXPECT_THAT(sill.reference_mm, ElementsAre(1.02, 1.00, 1.01));
  EXPECT_THAT(sill.film_um, ElementsAre(140, 155, 900));
  EXPECT_EQ(sill.drains, Drains::open);
  EXPECT_EQ(sill.place, (Place{31, 3}));
  EXPECT_NEAR(survey.zones.at(13).sheet_mm.value(), 0.9144, 1e-9);
  EXPECT_EQ(survey.zones.at(13).note, "battery tray taken out");
  ASSERT_EQ(survey.own.size(), 1u);
  EXPECT_EQ(survey.own[0].key, "own-a");
  EXPECT_EQ(survey.own[0].name, "sunroof tray");
  EXPECT_EQ(survey.own[0].role, body::Role::local);
  EXPECT_EQ(survey.own[0].side, body::Side::left);
  EXPECT_EQ(survey.own[0].seen.word, SeenWord::bare);
  EXPECT_EQ(survey.own[0].zone.found.at(0).hole, (Size{14, 9}));
}

TEST(Reader, PlacesASpotAtItsStationUnlessToldOtherwise) {
  const Survey survey = good("wherry-2025");
  const auto& found = survey.zones.at(51).found;
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].name, "rear end");
  EXPECT_TRUE(found[0].at_station);
  EXPECT_EQ(found[0].at, (Position{1610, -720, 210}));
  EXPECT_FALSE(found[1].at_station);
  EXPECT_EQ(found[1].at, (Position{1150, std::nullopt, 200}));
}

TEST(Reader, TakesEveryPartOfALine) {
  const Spot spot = good("wherry-2025").zones.at(51).found.at(0);
  EXPECT_EQ(spot.rust, Rust::pitting);
  EXPECT_EQ(spot.hand, Hand::firm);
  EXPECT_EQ(spot.tap, Tap::dull);
  EXPECT_EQ(spot.size, (Size{180, 60}));
  EXPECT_THAT(spot.metal_mm, ElementsAre(.81, .78, .84, .80));
  EXPECT_THAT(spot.pit_mm, ElementsAre(.31));
  ASSERT_EQ(spot.photos.size(), 2u);
  EXPECT_EQ(spot.photos[0].path, "photos/IMG_14.jpg");
  EXPECT_EQ(spot.photos[1].path, "photos/IMG_15.jpg");
  EXPECT_EQ(spot.note, "behind the splash plate");
  EXPECT_EQ(spot.place, (Place{35, 9}));

  const Repair repair = good("wherry-2025").zones.at(51).repairs.at(0);
  EXPECT_EQ(repair.kind, RepairKind::let_in);
  EXPECT_EQ(repair.joint, Joint::seam_weld);
  EXPECT_EQ(repair.size, (Size{300, 120}));
  EXPECT_EQ(repair.date, (PartialDate{2021, 5, 0}));
  EXPECT_EQ(repair.beneath, Beneath::cut_out);
  EXPECT_EQ(repair.now, Now::sound);
  EXPECT_FALSE(repair.now_assumed);
}

TEST(Reader, TakesEveryKeyWrittenLong) {
  const Zone zone = good("long").zones.at(52);
  const Spot& spot = zone.found.at(0);
  EXPECT_EQ(spot.probe, Probe::goes_in);
  EXPECT_EQ(spot.magnet, Magnet::none);
  ASSERT_EQ(spot.metal_mm.size(), 3u);
  EXPECT_NEAR(spot.metal_mm[2], 0.8128, 1e-12);
  ASSERT_TRUE(spot.pits);
  EXPECT_EQ(spot.pits->each, (Size{50, 50}));
  EXPECT_THAT(spot.pits->deepest_mm, ElementsAre(.2, .3, .25, .1, .4));
  EXPECT_EQ(spot.hole, (Size{14, 14}));
  EXPECT_EQ(spot.crack_mm, 30);
  EXPECT_EQ(spot.stuffed, Stuffed::foam);
  EXPECT_EQ(spot.photos.at(0).path, "14.jpeg");
  EXPECT_EQ(spot.photos.at(1).path, "details/lip.JPG");
  EXPECT_EQ(spot.note, "behind the splash plate, wet");
  EXPECT_TRUE(spot.at_station);
  EXPECT_EQ(zone.found.at(1).at, (Position{1300, 730, 320}));
  const Repair& plate = zone.repairs.at(0);
  EXPECT_EQ(plate.joint, Joint::stitch);
  EXPECT_EQ(plate.beneath, Beneath::over_rust);
  EXPECT_EQ(plate.now, Now::rusting);
  EXPECT_EQ(plate.note, "tar over the edges");
  EXPECT_TRUE(zone.repairs.at(1).now_assumed);
  EXPECT_EQ(zone.photos.at(0).path, "17.jpeg");
}

TEST(Reader, TakesInches) {
  const Survey survey = good("inch");
  const Zone& sill = survey.zones.at(51);
  ASSERT_EQ(sill.reference_mm.size(), 3u);
  EXPECT_NEAR(sill.reference_mm[0], 1.016, 1e-12);
  EXPECT_NEAR(sill.reference_mm[1], 1.02, 1e-12);
  EXPECT_NEAR(sill.reference_mm[2], 1.02108, 1e-12);
  const Spot& middle = sill.found.at(1);
  EXPECT_NEAR(middle.hole.value().along_mm, 38.1, 1e-12);
  EXPECT_NEAR(middle.at.x_mm.value(), 1150.62, 1e-9);
  EXPECT_NEAR(middle.at.z_mm.value(), 200, 1e-12);
  EXPECT_NEAR(middle.size.value().along_mm, 177.8, 1e-12);
  EXPECT_EQ(survey.seen.at(64).reason, "fresh underseal");
  EXPECT_DOUBLE_EQ(survey.seen.at(65).share, 0.4);
  EXPECT_EQ(survey.seen.at(66).word, SeenWord::hidden);
  EXPECT_EQ(survey.seen.at(66).reason, "heat shield in the way");
  EXPECT_EQ(survey.zones.at(61).found.at(0).tap, Tap::crunches) << "felt in a zone known by tap";
}

TEST(Reader, AsksForLittle) {
  const Survey survey = good("least");
  EXPECT_TRUE(survey.seen.empty());
  EXPECT_TRUE(survey.zones.empty());
  EXPECT_FALSE(survey.gauge.uncertainty_mm);
}

TEST(Reader, ReportsTenMistakesAtOnce) {
  const std::string source =
      file_text(source_folder() + "/tests/cases/bad/meaning/ten-mistakes.yaml");
  const Reading reading = read_with_small_plan(source);
  EXPECT_EQ(reading.problems.size(), 11u) << "ten lines, one of them with two";
  EXPECT_TRUE(std::is_sorted(reading.problems.begin(), reading.problems.end(),
                             [](const auto& a, const auto& b) { return a.place < b.place; }));
}

TEST(Reader, LeavesASyntaxErrorAlone) {
  const Reading reading = read_with_small_plan("survey: [1\nbody: x\n");
  EXPECT_FALSE(reading.survey);
  EXPECT_EQ(reading.problems.size(), 1u);
}

}  // namespace
}  // namespace tinworm::survey
