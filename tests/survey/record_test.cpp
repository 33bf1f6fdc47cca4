// What belongs to no finding: repairs with their places, this car's own facts, marks, cuts.
#include <gtest/gtest.h>

#include "survey/small_plan.hpp"
#include "survey/told.hpp"

namespace tinworm::survey {
namespace {

const std::string head =
    "survey: 1\nbody: two-door-saloon 1\ncar: {name: Wherry 1200}\nvisit: {date: 2025-04-12}\n";

std::string complaints(const std::string& text) {
  const Reading reading = read_with_small_plan(head + text);
  return reading.survey ? "" : yaml::to_text(reading.problems, "survey.yaml", "");
}

Survey read(const std::string& text) {
  const Reading reading = read_with_small_plan(head + text);
  EXPECT_TRUE(reading.survey) << yaml::to_text(reading.problems, "", text);
  return reading.survey.value_or(Survey{});
}

Zone sill(const std::string& text) {
  const Survey survey = read("seen: {bare: 51}\nzones:\n  51:\n" + text);
  const auto zone = survey.zones.find(51);
  return zone == survey.zones.end() ? Zone{} : zone->second;
}

TEST(Record, ARepairHasAPlaceReadingsAndASheetOfItsOwn) {
  const Zone zone = sill(
      "    repairs:\n"
      "      - rear end: Let-In, seam-weld, stitch, 300x120, 2021-05, cut-out, sound, sheet 1.2, "
      "metal 1.18 1.20, open-side, layers 3, behind the seat\n");
  ASSERT_EQ(zone.repairs.size(), 1u);
  const Repair& repair = zone.repairs[0];
  EXPECT_EQ(repair.name, "rear end");
  EXPECT_TRUE(repair.at_station);
  EXPECT_EQ(repair.at.x_mm, 1610);
  EXPECT_EQ(repair.joint, Joint::seam_weld);
  EXPECT_EQ(repair.other_joints, std::vector{Joint::stitch});
  EXPECT_EQ(repair.sides, Sides::open_side);
  EXPECT_EQ(repair.layers, 3);
  EXPECT_EQ(repair.sheet_mm, 1.2);
  EXPECT_EQ(repair.metal_mm, (std::vector{1.18, 1.20}));
  EXPECT_EQ(repair.note, "behind the seat");
}

TEST(Record, SheetAndLayersAreEnglishWordsToo) {
  const Zone zone =
      sill("    repairs:\n      - lapped, sheet bent round the edge, layers of paint over it\n");
  ASSERT_EQ(zone.repairs.size(), 1u);
  EXPECT_EQ(zone.repairs[0].note, "sheet bent round the edge, layers of paint over it");
  EXPECT_FALSE(zone.repairs[0].layers);
}

TEST(Record, ShapesAreFindings) {
  const Zone zone = sill("    found:\n      - middle: dent, filler, 40x20\n");
  ASSERT_EQ(zone.found.size(), 1u);
  EXPECT_EQ(zone.found[0].shapes, (std::vector{Shape::dent, Shape::filler}));
}

TEST(Record, DrainsByPlaceAreAsBadAsTheWorst) {
  for (const char* text : {"    drains: {front end: open, rear end: blocked}\n",
                           "    drains: front end open, rear end blocked\n"}) {
    const Zone zone = sill(text);
    EXPECT_EQ(zone.drains, Drains::blocked) << text;
    EXPECT_EQ(zone.drains_at,
              (std::vector<DrainsAt>{{"front end", Drains::open}, {"rear end", Drains::blocked}}));
  }
}

TEST(Record, AnInsideMayBeSeenInPart) {
  const Zone zone = sill("    inside: part 40 %\n");
  EXPECT_EQ(zone.inside, Inside::part);
  EXPECT_DOUBLE_EQ(zone.inside_share, 0.4);
}

TEST(Record, ThisCarsOwnFacts) {
  const Survey survey = read(
      "summary: Sound where it was looked at.\n"
      "tools: [gauge, scope]\n"
      "gaps: [{where: door rear edge, side: left, kind: step, wheels: 4.5 mm}]\n"
      "also:\n"
      "  - {what: rear brake hose, say: cracked, when: at-once}\n"
      "  - {what: coolant, when: 65000 mi}\n"
      "zones:\n"
      "  own-a: {name: rear belt mount, role: local, side: left, view: left, "
      "at: {x: 1900, z: 500}, carries: belts, seen: bare}\n"
      "opened:\n"
      "  51: {rear end: {date: 2025-09, metal: .40, say: membrane gone}}\n");
  EXPECT_EQ(survey.tools, (std::vector{Tool::gauge, Tool::scope}));
  EXPECT_EQ(survey.gaps.at(0).side, body::Side::left);
  EXPECT_EQ(survey.gaps.at(0).kind, GapKind::step);
  EXPECT_EQ(survey.also.at(0).matter, Matter::brakes);
  EXPECT_TRUE(is_at_once(survey.also.at(0)));
  EXPECT_EQ(survey.also.at(1).matter, Matter::other);
  EXPECT_EQ(when_text(survey.also.at(1)), "by 65000 mi");
  EXPECT_EQ(survey.own.at(0).carries, body::Carries::belts);
  EXPECT_EQ(survey.own.at(0).view, body::View::left);
  ASSERT_EQ(survey.opened.size(), 1u);
  EXPECT_EQ(opened_text(survey.opened[0]), "rear end, 2025-09: metal 0.40 mm; membrane gone");
}

TEST(Record, AReasonsFirstWordTellsWhatHidTheZone) {
  const Survey survey = read("seen: {hidden: {61: Not-agreed by the owner, 62: heat shield}}\n");
  EXPECT_EQ(survey.seen.at(61).by, HiddenBy::not_agreed);
  EXPECT_EQ(survey.seen.at(61).reason, "Not-agreed by the owner");
  EXPECT_FALSE(survey.seen.at(62).by);
}

TEST(Record, WhatIsPrivateIsToldToTheOwnerAlone) {
  Survey survey;
  survey.car.colour = "green";
  survey.car.engine_number = "E-77";
  survey.summary = "My words.";
  const auto keys = [&](Reader reader) {
    std::string all;
    for (const Told& each : told_of_car(survey, reader)) all += std::string(each.key) + " ";
    return all;
  };
  EXPECT_EQ(keys(Reader::owner), "colour engine-number summary ");
  EXPECT_EQ(keys(Reader::anybody), "colour ");
}

struct Refused {
  std::string text, complaint;
};

TEST(Record, MistakesAreToldWithTheirCure) {
  const std::string zone = "seen: {bare: 51}\nzones:\n  51:\n";
  for (const auto& [text, complaint] : {
           Refused{zone + "    inside: part\n",
                   "8:13: an inside seen in part needs its share (found \"part\"; allowed: part 40 "
                   "%; say how much of it was looked into)\n"},
           {zone + "    drains: front end shut\n",
            "8:23: unknown word for drain holes (found \"shut\"; allowed: open, blocked, "
            "plugged)\n"},
           {zone + "    repairs:\n      - let-in, stitch, stitch\n",
            "9:17: \"stitch\" stands twice (keep one)\n"},
           {zone + "    repairs:\n      - let-in, layers 20\n",
            "9:24: a number of layers is out of range (found \"20\"; allowed: 2 to 9)\n"},
           {"tools: [gauge, spade]\n",
            "5:16: unknown word for a tool (found \"spade\"; allowed: gauge, film, scope, magnet, "
            "tap, probe, mirror, lamp)\n"},
           {"opened: {51: {rear end: {date: 2025-09}}}\n",
            "5:15: what the cut showed is not said (found \"rear end\"; allowed: metal: .40, say: "
            "membrane gone; give what was read or seen)\n"},
       })
    EXPECT_EQ(complaints(text), "survey.yaml:" + complaint) << text;
}

}  // namespace
}  // namespace tinworm::survey
