// The small body of tests/weighing with the kinds of its parts, and rust where a case wants it.
#pragma once

#include <algorithm>
#include <optional>
#include <string>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"
#include "work/plan.hpp"

namespace tinworm::work::fixture {

namespace car = weighing::fixture;

inline body::Plan body_plan() {
  body::Plan plan = car::plan();
  for (body::Zone& zone : plan.zones) {
    if (zone.number == 51 || zone.number == 52) zone.job = body::Job::outer_sill;
    if (zone.number == 61 || zone.number == 62) zone.job = body::Job::spring_hanger_rear;
  }
  return plan;
}

// The same with what stands behind the left sill: membrane, inner sill, jacking point, outrigger
// and floor.
inline body::Plan layered_plan() {
  using body::Build, body::Role, body::Job;
  body::Plan plan = body_plan();
  const auto add = [&](int number, const char* name, Build build, geometry::Box3 extent, Job job,
                       std::vector<int> joins) {
    body::Zone zone = car::zone(number, name, Role::main, build, extent, 1.0, .2);
    zone.job = job;
    zone.joins = std::move(joins);
    plan.zones.push_back(std::move(zone));
  };
  add(53, "part behind", Build::box, {{400, 1400}, {-655, -645}, {140, 290}}, Job::sill_membrane,
      {51, 55});
  add(55, "part within", Build::box, {{400, 1400}, {-650, -600}, {130, 300}}, Job::inner_sill,
      {51, 53, 57, 63, 65});
  add(57, "socket", Build::box, {{850, 950}, {-600, -520}, {130, 230}}, Job::jacking_point, {55});
  add(63, "arm", Build::box, {{500, 600}, {-600, -300}, {130, 230}}, Job::cross_member, {55, 65});
  add(65, "pan", Build::single, {{400, 1400}, {-600, -150}, {200, 230}}, Job::floor, {55, 63});
  std::ranges::sort(plan.zones, {}, &body::Zone::number);
  return plan;
}

inline survey::Survey sound_survey() {
  return car::sound_survey(body_plan());
}

// A hole that the hand goes through.
inline survey::Spot hole(const std::string& name, geometry::Point3 at, survey::Size size) {
  survey::Spot spot = car::placed(name, survey::Rust::hole, at, size);
  spot.hand = survey::Hand::breaks;
  return spot;
}

// In the middle of each of these zones.
inline void add_holes(survey::Survey& survey, const std::vector<int>& zones) {
  for (const int number : zones) {
    const geometry::Box3& in = survey.body->zone(number)->extent;
    survey.zones[number].found = {
        hole("spot", {in.x.middle(), in.y.middle(), in.z.middle()}, {60, 40})};
  }
}

inline Plan planned(const survey::Survey& survey, const rates::Rates& rates = {}) {
  return plan(weighing::weigh(survey, {}), rates);
}

// Null where there is none.
inline const Task* task(const Plan& plan, int zone, Kind kind) {
  const auto found = std::ranges::find_if(plan.tasks, [&](const Task& each) {
    return each.zone == zone && each.kind == kind && (zone != 0 || each.name.empty());
  });
  return found == plan.tasks.end() ? nullptr : &*found;
}

}  // namespace tinworm::work::fixture
