// A small body plan for the survey's tests: numbers and stations, no drawing.
#pragma once

#include <memory>
#include <string_view>

#include "body/plan.hpp"
#include "survey/reader.hpp"

namespace tinworm::survey {

inline body::PlanPtr small_plan() {
  auto plan = std::make_shared<body::Plan>();
  plan->name = "two-door-saloon";
  const auto add = [&](int first, int last, body::Role role) {
    for (int number = first; number <= last; ++number) {
      body::Zone zone;
      zone.number = number;
      zone.role = role;
      plan->zones.push_back(zone);
    }
  };
  add(13, 18, body::Role::local);
  add(33, 33, body::Role::local);
  add(41, 48, body::Role::skin);
  add(51, 58, body::Role::main);
  add(61, 72, body::Role::main);
  for (body::Zone& zone : plan->zones) {
    if (zone.number != 51 && zone.number != 52) continue;
    const double y_mm = zone.number == 51 ? -720 : 720;
    zone.build = body::Build::box;
    zone.stations = {{"front end", {610, y_mm, 210}, {}},
                     {"middle", {1150, y_mm, 200}, {}},
                     {"rear end", {1610, y_mm, 210}, {}}};
  }
  return plan;
}

inline tl::expected<body::PlanPtr, yaml::Problem> find_small_plan(std::string_view name) {
  static const body::PlanPtr plan = small_plan();
  if (name == "two-door-saloon 1") return plan;
  return tl::make_unexpected(yaml::Problem{{},
                                           "no such body plan",
                                           std::string(name),
                                           "two-door-saloon 1",
                                           "`tinworm bodies` lists the plans"});
}

inline Reading read_with_small_plan(std::string_view yaml) {
  return read_survey(yaml, find_small_plan);
}

}  // namespace tinworm::survey
