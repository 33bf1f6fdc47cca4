// The small body of tests/weighing with rust where a case wants it.
#pragma once

#include <algorithm>
#include <optional>
#include <string>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"
#include "work/plan.hpp"

namespace tinworm::work::fixture {

namespace car = weighing::fixture;

// A hole that the hand goes through.
inline survey::Spot hole(const std::string& name, geometry::Point3 at, survey::Size size) {
  survey::Spot spot = car::placed(name, survey::Rust::hole, at, size);
  spot.hand = survey::Hand::breaks;
  return spot;
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
