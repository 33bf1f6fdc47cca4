#include "weighing/weigh.hpp"

#include <algorithm>

#include "weighing/advice.hpp"
#include "weighing/burden.hpp"
#include "weighing/gauging.hpp"
#include "weighing/nearness.hpp"
#include "weighing/rank.hpp"
#include "weighing/reach.hpp"
#include "weighing/section.hpp"
#include "weighing/verdict.hpp"
#include "weighing/weigh_box.hpp"
#include "weighing/weigh_zone.hpp"
#include "weighing/words.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {
namespace {

std::string why_not_seen(const survey::Seen& seen) {
  if (!seen.word) return "not recorded";
  if (seen.word == survey::SeenWord::tap) return "tapped only";
  return seen.reason.empty() ? "hidden" : seen.reason;
}

}  // namespace

double SectionLeft::area_mm2() const {
  double area_mm2 = 0;
  for (const WallLeft& wall : walls) area_mm2 += wall.area_mm2();
  return area_mm2;
}

double SectionLeft::left_area_mm2() const {
  double area_mm2 = 0;
  for (const WallLeft& wall : walls) area_mm2 += wall.area_mm2() * wall.left;
  return area_mm2;
}

const Zone* Result::zone(int number) const {
  const auto found = std::ranges::find_if(
      zones, [&](const Zone& z) { return z.own.empty() && z.number == number; });
  return found == zones.end() ? nullptr : &*found;
}

std::vector<const Spot*> Result::ranked() const {
  std::vector<const Spot*> found;
  for (const Zone& each : zones)
    for (const Spot& spot : each.spots)
      if (spot.rank > 0) found.push_back(&spot);
  std::ranges::sort(found, {}, &Spot::rank);
  return found;
}

Result weigh(const survey::Survey& survey, const rules::Rules& rules) {
  Result result;
  result.body = survey.body;
  result.survey = survey;
  result.constants = rules;
  result.rules_changed = rules::changed(rules);
  result.caution = standing_caution;
  const std::vector<ZoneFacts> facts = zone_facts(survey);
  const Gauging gauge = gauging(survey, rules);
  const std::vector<const body::Mount*> mounts = mounts_that_count(survey);
  const Context context{survey, rules, gauge, mounts};
  for (const ZoneFacts& zone : facts) result.zones.push_back(weigh_zone(zone, context));
  for (std::size_t i = 0; i < facts.size(); ++i)
    if (facts[i].fitted() && !facts[i].is_seen())
      result.not_seen.push_back({facts[i].number, why_not_seen(facts[i].seen), facts[i].own});

  result.main = coverage(result.zones, facts, body::Role::main);
  result.local = coverage(result.zones, facts, body::Role::local);
  result.skin_seen = coverage(result.zones, facts, body::Role::skin);
  std::vector<std::optional<SectionLeft>> left = sections(*survey.body, result.zones, facts, rules);
  Burdens weights = burdens(result.zones, facts, rules);
  result.structure = weights.structure;
  result.skin = weights.skin;
  result.shell = weights.shell;
  result.one_zone_gone = weights.one_zone_gone;
  for (std::size_t i = 0; i < result.zones.size(); ++i) result.zones[i].share = weights.shares[i];
  for (Zone& zone : result.zones)
    if (zone.damage && zone.role == body::Role::skin && zone.own.empty())
      zone.damage = skin_damage(zone, rules);
  for (std::size_t i = 0; i < left.size(); ++i) {
    result.boxes.push_back(weigh_box(survey.body->boxes[i], result.zones, facts, rules));
    result.boxes.back().section = std::move(left[i]);
  }
  rank(result, rules);
  judge(result, facts, rules);
  reach(result, facts, rules);
  result.advice = advice(result, rules);
  return result;
}

}  // namespace tinworm::weighing
