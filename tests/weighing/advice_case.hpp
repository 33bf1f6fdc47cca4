// Cases of advice: a survey that raises none, changed until it raises one piece.
#pragma once

#include <gtest/gtest.h>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "weighing/advice.hpp"
#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing::fixture {

using survey::Survey;

inline survey::Spot& add_spot(Survey& survey, int zone, const std::string& name,
                              std::optional<survey::Rust> rust = survey::Rust::none,
                              std::vector<double> metal_mm = {}) {
  survey::Spot spot = fixture::spot(name, rust);
  const geometry::Box3& extent = survey.body->zone(zone)->extent;
  spot.at = {extent.x.middle(), extent.y.middle(), extent.z.middle()};
  spot.size = survey::Size{60, 40};
  spot.metal_mm = std::move(metal_mm);
  spot.place = {100 + zone, 9};
  survey.zones[zone].found.push_back(spot);
  return survey.zones[zone].found.back();
}

// A survey of which nobody would ask anything.
inline Survey thorough() {
  Survey survey = fixture::sound_survey();
  survey.gauge.coating_assumed = false;
  for (auto& [number, seen] : survey.seen) seen.place = {number, 3};
  for (const int zone : {11, 51, 52, 61, 62}) {
    const double sheet_mm = survey.body->zone(zone)->sheet_mm;
    survey.zones[zone].reference_mm = {sheet_mm, sheet_mm + .01};
    add_spot(survey, zone, "station", survey::Rust::none, {sheet_mm - .01, sheet_mm + .01});
    survey.zones[zone].marks = {{"station", "25 above the seam"}};
  }
  return survey;
}

inline survey::Repair& add_repair(Survey& survey, int zone, survey::RepairKind kind) {
  survey::Repair repair;
  repair.kind = kind;
  repair.joint = survey::Joint::seam_weld;
  repair.date = survey::PartialDate{2021, 5, 0};
  repair.now_assumed = false;
  survey.zones[zone].repairs.push_back(repair);
  return survey.zones[zone].repairs.back();
}

inline void change_plan(Survey& survey, const std::function<void(body::Plan&)>& change) {
  body::Plan plan = *survey.body;
  change(plan);
  survey.body = std::make_shared<const body::Plan>(std::move(plan));
}

inline void read_film(Survey& survey,
                      const std::vector<std::pair<int, std::vector<double>>>& films) {
  for (const auto& [zone, film_um] : films) {
    survey.zones[zone].film_um = film_um;
    survey.seen[zone].word = survey::SeenWord::coated;
  }
}

inline void forget_readings(Survey& survey, const std::vector<int>& zones) {
  for (const int zone : zones) survey.zones[zone].found.clear();
}

using Change = std::function<void(Survey&)>;

struct Case {
  std::string kind, asked;
  Change asks, silent;
};

inline std::vector<std::string> asked(const Survey& survey, const std::string& kind) {
  std::vector<std::string> texts;
  for (const Advice& each : weigh(survey, {}).advice)
    if (each.kind == kind) texts.push_back(text(each));
  return texts;
}

inline void nothing(Survey&) {}

// Changes of one spot, repair or zone, to keep the tables short.
inline Change spot(int zone, const std::function<void(survey::Spot&)>& change) {
  return [=](Survey& survey) { change(survey.zones[zone].found.front()); };
}
inline Change repair(int zone, survey::RepairKind kind,
                     const std::function<void(survey::Repair&)>& change) {
  return [=](Survey& survey) { change(add_repair(survey, zone, kind)); };
}

inline void expect(const std::vector<Case>& cases) {
  for (const Case& c : cases) {
    SCOPED_TRACE(c.kind + ": " + c.asked);
    Survey asks = thorough(), silent = thorough();
    c.asks(asks);
    c.silent(silent);
    EXPECT_EQ(asked(asks, c.kind), std::vector<std::string>{c.asked});
    EXPECT_EQ(asked(silent, c.kind), std::vector<std::string>{});
  }
}

}  // namespace tinworm::weighing::fixture
