// Surveys of anything on any body, the same for the same seed.
#pragma once

#include <random>

#include "scene/fixture.hpp"

namespace tinworm::scene::fixture {

// A fifth of the zones hidden or seen in part or by scope; something of any kind and size at some
// of the stations, without a place or a size at others; repairs that can and can't be relied on.
inline survey::Survey random_survey(const body::PlanPtr& plan, unsigned seed) {
  using survey::Rust;
  std::mt19937 random(seed);
  const auto upto = [&](int most) { return static_cast<int>(random() % unsigned(most)); };
  const Rust words[] = {Rust::surface, Rust::pitting, Rust::scale, Rust::hole, Rust::blister};
  survey::Survey survey = clean_survey(plan);
  const int seldom = 2 + upto(5);  // how much is found differs from car to car
  for (const body::Zone& zone : plan->zones) {
    const int seen = upto(20);
    if (seen < 3) {
      survey.seen[zone.number] = {survey::SeenWord::hidden, 0, seen == 0 ? "carpet glued" : "", {}};
      survey.zones.erase(zone.number);
      continue;
    }
    if (seen == 3) survey.seen[zone.number] = {survey::SeenWord::part, 0.5, "", {}};
    if (seen > 12) survey.seen[zone.number].word = survey::SeenWord::coated;
    for (const body::Station& station : zone.stations) {
      if (upto(seldom) != 0) continue;
      survey::Spot found =
          spot(station.name, words[upto(5)], at(station), {10.0 + upto(290), 5.0 + upto(145)});
      if (upto(6) == 0) found.at = {};
      if (upto(6) == 0) found.size.reset();
      if (upto(5) == 0) found.hand = survey::Hand::gives;
      survey.zones[zone.number].found.push_back(found);
    }
    if (upto(12) != 0) continue;
    survey::Repair repair;
    repair.kind = survey::RepairKind::let_in;
    if (upto(2) == 0) repair.joint = survey::Joint::seam_weld;
    survey.zones[zone.number].repairs.push_back(repair);
  }
  return survey;
}

}  // namespace tinworm::scene::fixture
