// A repair's own readings, held against its own sheet.
#include "weighing/repair_metal.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using survey::RepairKind;

// A let-in of the zone, seam-welded and sound: relied on if nothing speaks against it.
survey::Repair good_repair(std::optional<double> sheet_mm, std::vector<double> metal_mm) {
  survey::Repair repair;
  repair.kind = RepairKind::let_in;
  repair.joint = survey::Joint::seam_weld;
  repair.now_assumed = false;
  repair.sheet_mm = sheet_mm;
  repair.metal_mm = std::move(metal_mm);
  return repair;
}

Result weighed(int zone, const survey::Repair& repair) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[zone].repairs = {repair};
  return weigh(survey, rules::Rules{});
}

// Limits by hand: .85 of 1.2 is 1.02, of 2.0 it is 1.70; the original sheets (1.0 and 2.0 mm) play
// no part.
TEST(RepairMetal, IsHeldAgainstTheRepairsOwnSheet) {
  struct {
    const char* what;
    int zone;
    std::optional<double> sheet_mm;
    std::vector<double> metal_mm;
    std::optional<bool> reliable;
    Verdict verdict;
  } const cases[] = {
      {"as new", 51, 1.2, {1.18, 1.20}, true, Verdict::leave_alone},
      {"on the limit counts to its sound side", 51, 1.2, {1.02}, true, Verdict::leave_alone},
      {"past its limit, though 98 % of the old sheet", 51, 1.2, {.98, .98}, false, Verdict::mend},
      {"well past it", 51, 1.2, {.79}, false, Verdict::mend},
      {"past it on a mount", 61, 2.0, {1.5, 1.5}, false, Verdict::keep_parked},
      {"thin for the old sheet, whole for its own", 61, 1.5, {1.5}, true, Verdict::leave_alone},
      {"no sheet to hold it against", 51, {}, {.5}, true, Verdict::leave_alone},
      {"no readings", 51, 1.2, {}, true, Verdict::leave_alone},
      {"on skin it changes nothing", 41, 1.2, {.5}, false, Verdict::leave_alone},
  };
  for (const auto& each : cases) {
    const Result result = weighed(each.zone, good_repair(each.sheet_mm, each.metal_mm));
    EXPECT_EQ(result.zone(each.zone)->repairs.at(0).reliable, each.reliable) << each.what;
    EXPECT_EQ(result.verdict, each.verdict) << each.what;
  }
}

TEST(RepairMetal, SaysWhatItRead) {
  const Result bad = weighed(51, good_repair(1.2, {.79, .79}));
  EXPECT_EQ(bad.zone(51)->repairs.at(0).why,
            "its own metal is down to 66 % of its sheet (0.79 of 1.20 mm)");
  survey::Repair tacked = good_repair(1.2, {.79, .79});
  tacked.joint = survey::Joint::stitch;
  EXPECT_EQ(weighed(51, tacked).zone(51)->repairs.at(0).why,
            "joined by stitch where a seam weld is needed; its own metal is down to 66 % of its "
            "sheet (0.79 of 1.20 mm)");
}

TEST(RepairMetal, WeighsNoMoreThanItsReadingsNorThanABadRepair) {
  const auto left = [](std::vector<double> metal_mm) {
    return weighed(51, good_repair(1.0, std::move(metal_mm))).zone(51)->spots.at(0).metal.weighed;
  };
  EXPECT_DOUBLE_EQ(left({.80}).value, .50);  // as any repair that can't be relied on
  EXPECT_DOUBLE_EQ(left({.30}).value, .30);
  EXPECT_EQ(weighed(51, good_repair(1.0, {.30})).zone(51)->spots.at(0).evidence,
            Evidence::measured);
}

TEST(RepairMetal, OfATreatmentIsNone) {
  survey::Repair waxed = good_repair(1.2, {.5});
  waxed.kind = RepairKind::treated;
  EXPECT_TRUE(weighed(51, waxed).zone(51)->spots.empty());
}

}  // namespace
}  // namespace tinworm::weighing
