// Zones that the body plan doesn't know, some of which carry a mount of their own.
#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using body::Carries, body::Role;

survey::OwnZone own_zone(std::optional<Carries> carries, Role role, survey::Spot found) {
  survey::OwnZone own;
  own.key = "own-a";
  own.name = "rear belt plate";
  own.role = role;
  own.side = body::Side::left;
  own.at = {900, -690, 200};  // in the middle of the left sill
  own.carries = carries;
  own.seen.word = survey::SeenWord::bare;
  own.zone.found = {std::move(found)};
  return own;
}

survey::Spot holed() {
  survey::Spot spot = fixture::spot("edge", survey::Rust::hole);
  spot.hole = survey::Size{30, 30};
  return spot;
}

Result weighed(survey::OwnZone own) {
  survey::Survey survey = fixture::sound_survey();
  survey.own = {std::move(own)};
  return weigh(survey, rules::Rules{});
}

TEST(OwnZone, IsOnItsOwnMount) {
  struct {
    const char* what;
    std::optional<Carries> carries;
    Role role;
    Verdict verdict;
    Near near;
    double counts;
  } const cases[] = {
      {"belts", Carries::belts, Role::local, Verdict::keep_parked, Near::on_mount, 1},
      {"suspension", Carries::suspension, Role::main, Verdict::keep_parked, Near::on_mount, 1},
      {"a tank's strap lets go", Carries::tank, Role::local, Verdict::keep_parked, Near::no, .5},
      {"a seat is under no near rule", Carries::seat, Role::local, Verdict::mend, Near::no, .5},
      {"carries nothing", {}, Role::local, Verdict::mend, Near::no, .5},
  };
  for (const auto& each : cases) {
    const Result result = weighed(own_zone(each.carries, each.role, holed()));
    const Spot& spot = result.zones.back().spots.at(0);
    EXPECT_EQ(result.verdict, each.verdict) << each.what;
    EXPECT_EQ(spot.bearing.near, each.near) << each.what;
    EXPECT_EQ(spot.counts, each.counts) << each.what;
    EXPECT_EQ(result.zones.back().on_mount, each.near == Near::on_mount) << each.what;
  }
}

TEST(OwnZone, SaysWhichMount) {
  const Result result = weighed(own_zone(Carries::belts, Role::local, holed()));
  ASSERT_EQ(result.reasons.size(), 1u);
  EXPECT_EQ(result.reasons[0].rule, "on-mount");
  EXPECT_NE(result.reasons[0].text.find("where the rear belt plate stands"), std::string::npos)
      << result.reasons[0].text;
}

TEST(OwnZone, MakesNoOtherZoneNear) {
  survey::Survey survey = fixture::sound_survey();
  survey.own = {own_zone(Carries::belts, Role::local, fixture::spot("edge", survey::Rust::none))};
  survey.zones[51].found = {
      fixture::placed("middle", survey::Rust::surface, {900, -690, 200}, survey::Size{50, 50})};
  const Result result = weigh(survey, rules::Rules{});
  EXPECT_EQ(result.zone(51)->spots.at(0).bearing.near, Near::no);
}

TEST(OwnZone, HasARepairOnItsMount) {
  survey::OwnZone own = own_zone(Carries::belts, Role::local, holed());
  own.zone.found.clear();
  survey::Repair brazed;
  brazed.kind = survey::RepairKind::brazed;
  own.zone.repairs = {brazed};
  const Result result = weighed(own);
  EXPECT_EQ(result.verdict, Verdict::keep_parked);
  ASSERT_EQ(result.reasons.size(), 1u);
  EXPECT_EQ(result.reasons[0].rule, "repair-on-mount");
}

}  // namespace
}  // namespace tinworm::weighing
