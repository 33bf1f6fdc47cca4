// A body of seven zones and two mounts in code, small enough to work by hand.
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "body/plan.hpp"
#include "survey/survey.hpp"

namespace tinworm::weighing::fixture {

inline body::Zone zone(int number, std::string name, body::Role role, body::Build build,
                       geometry::Box3 extent, double sheet_mm, double area_m2) {
  body::Zone zone;
  zone.number = number;
  zone.name = std::move(name);
  zone.role = role;
  zone.build = build;
  zone.extent = extent;
  zone.sheet_mm = sheet_mm;
  zone.area_m2 = area_m2;
  return zone;
}

inline body::Mount mount(std::string what, body::Carries carries, geometry::Point3 at,
                         std::vector<int> on) {
  body::Mount mount;
  mount.what = std::move(what);
  mount.carries = carries;
  mount.at = at;
  mount.on = std::move(on);
  return mount;
}

// Main: 11 tunnel, 51/52 sill (box, hides 61/62), 61/62 spring hanger. Local: 71 boot side. Skin:
// 41 wing. The hanger's mount stands on 61 at (1500, -600, 300); the sill ends at x = 1400.
inline body::Plan plan() {
  using body::Build, body::Role;
  body::Plan plan;
  plan.name = "test-body";
  plan.zones = {
      zone(11, "tunnel", Role::main, Build::single, {{400, 1400}, {-150, 150}, {150, 350}}, 1.0,
           0.40),
      zone(41, "wing", Role::skin, Build::single, {{-600, 400}, {-780, -700}, {300, 900}}, 0.9,
           0.60),
      zone(51, "outer sill", Role::main, Build::box, {{400, 1400}, {-720, -650}, {130, 300}}, 1.0,
           0.30),
      zone(52, "outer sill", Role::main, Build::box, {{400, 1400}, {650, 720}, {130, 300}}, 1.0,
           0.30),
      zone(61, "spring hanger", Role::main, Build::single, {{1450, 1600}, {-680, -540}, {200, 400}},
           2.0, 0.05),
      zone(62, "spring hanger", Role::main, Build::single, {{1450, 1600}, {540, 680}, {200, 400}},
           2.0, 0.05),
      zone(71, "boot side", Role::local, Build::single, {{1600, 2600}, {-720, -500}, {200, 500}},
           0.8, 0.30),
  };
  for (body::Zone& each : plan.zones)
    if (each.number == 51) each.hides = {61};
  plan.mounts = {
      mount("front spring hanger", body::Carries::suspension, {1500, -600, 300}, {61}),
      mount("seat", body::Carries::seat, {900, 0, 300}, {11}),
  };
  return plan;
}

// Every zone seen bare, every inside scoped, nothing found.
inline survey::Survey sound_survey(body::Plan body = plan()) {
  survey::Survey survey;
  survey.body = std::make_shared<const body::Plan>(std::move(body));
  survey.visit.date = {2025, 4, 12};
  survey.gauge.uncertainty_mm = 0.05;
  for (const body::Zone& each : survey.body->zones) {
    survey.seen[each.number].word = survey::SeenWord::bare;
    if (each.build == body::Build::box) survey.zones[each.number].inside = survey::Inside::scoped;
  }
  return survey;
}

inline survey::Spot spot(std::string name, std::optional<survey::Rust> rust) {
  survey::Spot spot;
  spot.name = std::move(name);
  spot.rust = rust;
  return spot;
}

inline survey::Spot placed(std::string name, std::optional<survey::Rust> rust, geometry::Point3 at,
                           survey::Size size) {
  survey::Spot made = spot(std::move(name), rust);
  made.at = {at.x_mm, at.y_mm, at.z_mm};
  made.size = size;
  return made;
}

}  // namespace tinworm::weighing::fixture
