#include "weighing/nearness.hpp"

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using body::Carries;
using body::Role;
using survey::Rust;

// One mount at the origin, one zone whose extent surrounds nothing in particular.
struct Setting {
  Role role = Role::main;
  body::Joined joined = body::Joined::welded;
  Carries carries = Carries::suspension;
  std::vector<int> on = {};
  std::vector<int> into = {};
  body::Construction construction = body::Construction::unitary;
  bool frame_view = false;
};

Nearness at(const Setting& setting, const survey::Position& position,
            std::optional<survey::Size> size, geometry::Box3 extent) {
  body::Plan plan;
  plan.construction = setting.construction;
  plan.mounts = {fixture::mount("hanger", setting.carries, {0, 0, 0}, setting.on)};
  plan.mounts.front().into = setting.into;
  body::Zone zone = fixture::zone(61, "leg", setting.role, body::Build::single, extent, 1, 1);
  zone.joined = setting.joined;
  if (setting.frame_view) {
    body::Drawing drawing;
    drawing.view = body::View::frame;
    zone.drawn.push_back(drawing);
  }
  return nearness(position, size, zone, {&plan.mounts.front()}, plan, {});
}

const geometry::Box3 far_zone = {{280, 900}, {-50, 50}, {0, 20}};

// The radius: UK MOT inspection manual, cars, Appendix A section 2 (30 cm). Geometry constructed.
TEST(Nearness, ReachesThirtyCentimetresFromTheMountToTheSpotsRectangle) {
  const struct {
    const char* what;
    survey::Position position;
    std::optional<survey::Size> size;
    Near near;
    double distance_mm;
  } cases[] = {
      {"a point at 300", {300, 0, 0}, {}, Near::within_radius, 300},
      {"a point at 301", {301, 0, 0}, {}, Near::no, 0},
      {"half of 200 long reaches 300",
       {400, 0, 0},
       survey::Size{200, 10},
       Near::within_radius,
       300},
      {"half of 198 doesn't", {400, 0, 0}, survey::Size{198, 10}, Near::no, 0},
      {"across doesn't reach along", {400, 0, 0}, survey::Size{10, 200}, Near::no, 0},
      {"3-4-5 in space", {280, 60, 84}, {}, Near::within_radius, 298.42},
      {"height not recorded: the nearest counts",
       {300, 0, std::nullopt},
       {},
       Near::within_radius,
       300},
      {"only x recorded: placed in that direction alone",
       {290, std::nullopt, std::nullopt},
       {},
       Near::maybe,
       290},
      {"nothing recorded, zone from 280 on", {}, {}, Near::maybe, 280},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    const Nearness got = at({}, c.position, c.size, far_zone);
    EXPECT_EQ(got.near(), c.near);
    EXPECT_NEAR(got.may_be.distance_mm, c.distance_mm, .01);
  }
}

TEST(Nearness, DependsOnWhatTheMountCarriesAndWhatTheZoneIs) {
  const survey::Position near = {290, 0, 0};
  const struct {
    const char* what;
    Setting setting;
    Near near;
  } cases[] = {
      {"main", {}, Near::within_radius},
      {"local", {.role = Role::local}, Near::within_radius},
      {"skin", {.role = Role::skin}, Near::no},
      {"bolted", {.joined = body::Joined::bolted}, Near::no},
      {"bolted, mount stands on it", {.joined = body::Joined::bolted, .on = {61}}, Near::on_mount},
      {"skin, mount stands on it", {.role = Role::skin, .on = {61}}, Near::no},
      {"belts", {.carries = Carries::belts}, Near::within_radius},
      {"brakes", {.carries = Carries::brakes}, Near::within_radius},
      {"steering", {.carries = Carries::steering}, Near::within_radius},
      {"towing", {.carries = Carries::towing}, Near::within_radius},
      {"seat", {.carries = Carries::seat}, Near::no},
      {"jack", {.carries = Carries::jack}, Near::no},
      {"door", {.carries = Carries::door, .on = {61}}, Near::no},
      {"separate chassis, body zone",
       {.construction = body::Construction::separate_chassis},
       Near::no},
      {"separate chassis, frame zone",
       {.construction = body::Construction::separate_chassis, .frame_view = true},
       Near::within_radius},
      {"separate chassis, mount stands on it",
       {.on = {61}, .construction = body::Construction::separate_chassis},
       Near::on_mount},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    EXPECT_EQ(at(c.setting, near, {}, far_zone).near(), c.near);
  }
}

// Following the load: a mount's own part, a part welded to it, another. Common practice.
TEST(Nearness, FollowsTheLoadPath) {
  const Setting on{.on = {61}}, into{.into = {61}};
  EXPECT_EQ(at(on, {290, 0, 0}, {}, far_zone).near(), Near::on_mount);
  EXPECT_EQ(at(into, {290, 0, 0}, {}, far_zone).near(), Near::into_mount);
  EXPECT_EQ(at(on, {900, 0, 0}, {}, far_zone).near(), Near::no)
      << "the part never overrides distance";
  EXPECT_EQ(at(into, {301, 0, 0}, {}, far_zone).near(), Near::no);
}

TEST(Nearness, PlaceNotKnownOnAMountsPartMayBeOnIt) {
  const Nearness somewhere = at({.on = {61}}, {}, {}, far_zone);
  EXPECT_EQ(somewhere.near(), Near::maybe);
  EXPECT_EQ(somewhere.may_be.near, Near::on_mount);
  const geometry::Box3 small = {{0, 100}, {-50, 50}, {0, 20}};
  EXPECT_EQ(at({.on = {61}}, {}, {}, small).near(), Near::on_mount) << "all of it within 30 cm";
  EXPECT_EQ(at({.into = {61}}, {}, {}, small).near(), Near::maybe)
      << "of the mount's own part alone";
}

TEST(Nearness, TheWorstRowOfTheTableBears) {
  rules::Rules rules;
  const auto row = [&](Near near, double distance_mm, bool doubled = false) {
    return row_of({near, "x", Carries::suspension, distance_mm, doubled}, rules);
  };
  EXPECT_EQ(row(Near::on_mount, 100), 5);
  EXPECT_EQ(row(Near::on_mount, 100.1), 4);
  EXPECT_EQ(row(Near::on_mount, 250, true), 5);
  EXPECT_EQ(row(Near::into_mount, 200), 3);
  EXPECT_EQ(row(Near::into_mount, 200.1), 2);
  EXPECT_EQ(row(Near::within_radius, 0), 1);
}

TEST(Nearness, ZoneOutOfReachIsNeverMaybe) {
  EXPECT_EQ(at({}, {}, {}, {{301, 900}, {-50, 50}, {0, 20}}).near(), Near::no);
}

TEST(Nearness, AcrossIsTheWiderOfTheOtherExtents) {
  body::Zone zone =
      fixture::zone(61, "leg", Role::main, body::Build::single, {{0, 100}, {0, 30}, {0, 50}}, 1, 1);
  EXPECT_EQ(across_axis(zone), body::Axis::up);
  zone.runs = body::Axis::up;
  EXPECT_EQ(across_axis(zone), body::Axis::along);
}

TEST(Nearness, OwnZonesAreNeverNear) {
  survey::Survey survey = fixture::sound_survey();
  survey::OwnZone own;
  own.key = "own-a";
  own.role = Role::main;
  own.seen.word = survey::SeenWord::bare;
  own.zone.found = {fixture::placed("a", Rust::hole, {1500, -600, 300}, {20, 20})};
  survey.own = {own};
  const Result result = weigh(survey, {});
  EXPECT_EQ(result.zones.back().spots.front().near, Near::no);
  EXPECT_EQ(result.verdict, Verdict::mend);
}

}  // namespace
}  // namespace tinworm::weighing
