// A result built by hand, so that the formatters are tried without the method. A car invented for
// tests; figures chosen to be told apart, not to be true.
#pragma once

#include <memory>
#include <string>

#include "weighing/result.hpp"

namespace tinworm::output {

inline weighing::MetalLeft measured_metal() {
  weighing::MetalLeft metal;
  metal.shown = metal.weighed = {0.72, 0.80, 0.88};
  metal.kind = weighing::SpanKind::interval;
  metal.mean_mm = 0.808;
  metal.least_mm = 0.78;
  metal.readings = 4;
  metal.baseline_mm = 1.01;
  metal.baseline_from = weighing::BaselineFrom::reference;
  metal.pit_left = metal.pit_left_low = 0.49;
  metal.budget = {{"repeatability of the spot's mean", 0.02, 0.99, 8.0},
                  {"the gauge", 0.05, 0.2, std::nullopt}};
  metal.degrees_of_freedom = 8.5;
  return metal;
}

inline weighing::Zone thin_sill() {
  weighing::Spot spot;
  spot.zone = 51;
  spot.name = "rear end";
  spot.found = true;
  spot.rust = "pitting";
  spot.step = spot.step_low = weighing::Step::thin;
  spot.step_high = weighing::Step::pitted;
  spot.evidence = weighing::Evidence::measured;
  spot.near = weighing::Near::within_radius;
  spot.near_what = "front spring hanger";
  spot.near_mm = 148;
  spot.metal = measured_metal();
  spot.damage = 0.36;
  spot.share_of_length = 1;
  spot.weight = {0.3, 0.36, 0.45};
  spot.rank = 1;

  weighing::Zone zone;
  zone.number = 51;
  zone.name = "outer sill";
  zone.side = body::Side::left;
  zone.role = body::Role::main;
  zone.seen.word = survey::SeenWord::bare;
  zone.seen_share = 1;
  zone.measured = true;
  zone.inside = "scoped";
  zone.evidence = weighing::Evidence::measured;
  zone.step = zone.step_low = weighing::Step::thin;
  zone.step_high = weighing::Step::pitted;
  zone.near = "front spring hanger";
  zone.metal = spot.metal;
  zone.rusted_share = 0.035;
  zone.iso4628_3 = 4;
  zone.astm_d610 = 4;
  zone.weight = spot.weight;
  zone.damage = 0.36;
  zone.share = 1.0 / 3;
  zone.film = weighing::Film{155, 140, 900, "heavy"};
  zone.spots = {spot};
  zone.repairs = {{51, "", "let-in, seam-weld, 2021-05", true, "welded all round", false}};
  return zone;
}

inline weighing::Zone unseen_floor() {
  weighing::Zone zone;
  zone.number = 71;
  zone.name = "front floor";
  zone.side = body::Side::left;
  zone.role = body::Role::main;
  zone.seen.word = survey::SeenWord::hidden;
  zone.seen.share = 0;
  zone.seen.reason = "carpet glued down";
  return zone;
}

inline survey::Survey surveyed_car() {
  survey::Survey survey;
  survey.car.name = "Wherry 1200";
  survey.car.built = 1967;
  survey.car.odometer_km = 98492.3;
  survey.car.odometer = "61200 mi";
  survey.car.chassis_number = "W12-004417";
  survey.car.owner = "Private Person";
  survey.visit.date = {2025, 4, 12};
  survey.visit.place = "Private Lane";
  survey::Repair repair;
  repair.kind = survey::RepairKind::let_in;
  survey.zones[51].repairs = {repair};
  survey.also = {{.what = "tyres",
                  .matter = survey::Matter::tyres,
                  .code = "0301",
                  .say = "sidewalls uncracked",
                  .when = survey::When::next_survey}};
  return survey;
}

inline weighing::Result weighed_car() {
  body::Plan plan;
  plan.name = "two-door-saloon";
  weighing::Result result;
  result.body = std::make_shared<const body::Plan>(plan);
  result.survey = surveyed_car();
  result.file = "wherry-2025.yaml";
  result.sha256 = "0123456789abcdef" + std::string(48, '0');
  result.verdict = weighing::Verdict::mend;
  result.could_be = weighing::Verdict::keep_parked;
  result.open_up_first = true;
  result.reasons = {
      {51, "", "rear end", "51 outer sill, left, rear end: thin, 80 % left", "past-limit",
       "15 % loss is the limit"},
      {71, "", "", "71 front floor, left: not seen", "coverage", "a share must be seen (memory)"}};
  result.structure = {std::nullopt, 0.3, 0.83, "under 80 % of the main structure was seen"};
  result.skin = {0.1 + 0.2, 0.04, 0.31, ""};
  result.shell = {std::nullopt, 0.31, 0.9, "the structure has none"};
  result.one_zone_gone = 0.52;
  result.main = {0.64, 0.31, true};
  result.skin_seen = {1, 0, true};
  result.zones = {thin_sill(), unseen_floor()};
  result.boxes = {
      {"left sill", weighing::Span{0.77, 0.83, 0.88}, weighing::Span{0.8, 0.9, 0.95}, ""},
      {"right sill", {}, {}, "no wall was seen"}};
  result.open_up = {
      {71, "", "mount-not-seen", "the strut stands on it", weighing::Verdict::keep_parked}};
  result.not_seen = {{71, "carpet glued down", ""}};
  result.advice = {{51,
                    "",
                    "",
                    {7, 3},
                    "thick-patch",
                    "51 outer sill, left: coat of 900 um; is there filler?",
                    "Filler hides rust."}};
  result.caution = "An aid to judgement. What wasn't seen is not known.";
  return result;
}

}  // namespace tinworm::output
