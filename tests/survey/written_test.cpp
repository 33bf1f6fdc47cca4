// What is written is read as the same again: here by rule, in form_test.cpp through the reader.
#include "survey/written.hpp"

#include <gtest/gtest.h>

namespace tinworm::survey {
namespace {

TEST(Written, QuotesWhatAnotherReaderWouldTakeForSomethingElse) {
  const struct {
    const char* text;
    const char* as;
  } cases[] = {
      {"rear end", "rear end"},
      {"pit in the left-hand seam (lower)", "pit in the left-hand seam (lower)"},
      {"größe", "größe"},
      {"", "\"\""},
      {"yes", "\"yes\""},
      {"No", "\"No\""},
      {"null", "\"null\""},
      {"14", "\"14\""},
      {".5 off", "\".5 off\""},
      {"-front", "\"-front\""},
      {"wing: left", "\"wing: left\""},
      {"a # b", "\"a # b\""},
      {"left, lower", "\"left, lower\""},
      {" led", "\" led\""},
      {"said \"sound\"", "\"said \\\"sound\\\"\""},
      {"back\\slash", "\"back\\\\slash\""},
      {"two\nlines", "\"two\\nlines\""},
  };
  for (const auto& [text, as] : cases) EXPECT_EQ(written(text), as);
}

TEST(Written, ReadingsHaveHundredthsAndThousandthsWhereTheyCount) {
  EXPECT_EQ(readings({0.8, 0.81, 0.812, 12}), "0.80 0.81 0.812 12.00");
  EXPECT_EQ(readings({}), "");
}

TEST(Written, AFindingIsAllItsPartsButPhotosAndNotes) {
  Spot spot;
  spot.rust = Rust::pitting;
  spot.hand = Hand::firm;
  spot.tap = Tap::dull;
  spot.probe = Probe::goes_in;
  spot.magnet = Magnet::none;
  spot.stuffed = Stuffed::foam;
  spot.hole = Size{14, 9};
  spot.crack_mm = 30;
  spot.size = Size{180, 60.5};
  spot.metal_mm = {.81, .78};
  spot.pit_mm = {.31};
  spot.note = "not this";
  EXPECT_EQ(findings_line(spot),
            "pitting, firm, dull, probe goes-in, magnet none, stuffed foam, hole 14x9, crack 30, "
            "180x60.5, metal 0.81 0.78, pit 0.31");
  spot = {};
  spot.pits = PitPatches{{50, 50}, {.2, .3}};
  EXPECT_EQ(findings_line(spot), "deepest pit in each 50x50: 0.20 0.30");
  EXPECT_EQ(findings_line({}), "");
  spot = {};
  spot.size = Size{250, 25, false};
  EXPECT_EQ(findings_line(spot), "250");
}

TEST(Written, ARepairIsWithoutHowItIsNow) {
  Repair repair;
  repair.kind = RepairKind::plated_over;
  repair.joint = Joint::seam_weld;
  repair.size = Size{300, 120};
  repair.date = quantity::PartialDate{2021, 5, 0};
  repair.beneath = Beneath::cut_out;
  repair.now = Now::rusting;
  EXPECT_EQ(repair_line(repair), "plated-over, seam-weld, 300x120, 2021-05, cut-out");
}

}  // namespace
}  // namespace tinworm::survey
