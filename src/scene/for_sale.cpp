#include "scene/for_sale.hpp"

#include <algorithm>

#include "survey/field.hpp"

namespace tinworm::scene {
namespace {

survey::Zone zone_for_sale(const survey::Zone& zone) {
  survey::Zone kept = survey::copy_for_sale(survey::zone_fields(), zone);
  for (const survey::Spot& spot : zone.found)
    kept.found.push_back(survey::copy_for_sale(survey::finding_fields(), spot));
  for (const survey::Repair& repair : zone.repairs)
    kept.repairs.push_back(survey::copy_for_sale(survey::repair_fields(), repair));
  return kept;
}

// "none", "declared"; empty where the survey doesn't say.
std::string interest_for_sale(const std::string& interest) {
  return interest.empty() || interest == "none" ? interest : "declared";
}

// The word of its matter and when it must be seen to: what is said of it is free text.
std::vector<survey::Also> also_for_sale(const std::vector<survey::Also>& also) {
  std::vector<survey::Also> kept;
  for (const survey::Also& item : also) {
    survey::Also one;
    one.what = word(item.matter);
    one.matter = item.matter;
    one.when = item.when;
    const bool told = std::ranges::any_of(kept, [&](const survey::Also& each) {
      return each.matter == one.matter && each.when == one.when;
    });
    if (!told) kept.push_back(std::move(one));
  }
  return kept;
}

survey::Survey survey_for_sale(const survey::Survey& survey, bool signed_name) {
  survey::Survey kept;
  kept.body = survey.body;
  kept.units = survey.units;
  kept.car.name = survey.car.name;
  kept.car.built = survey.car.built;
  kept.visit.date = survey.visit.date;
  kept.visit.weather = survey.visit.weather;
  kept.tools = survey.tools;
  kept.fitted = survey.fitted;
  kept.also = also_for_sale(survey.also);
  if (signed_name) {
    kept.visit.by = survey.visit.by;
    kept.visit.interest = interest_for_sale(survey.visit.interest);
  }
  for (const auto& [number, zone] : survey.zones) kept.zones[number] = zone_for_sale(zone);
  for (const survey::OwnZone& own : survey.own) {
    survey::OwnZone one;
    one.key = own.key;
    one.name = own_part;
    one.role = own.role;
    one.side = own.side;
    one.view = own.view;
    one.at = own.at;
    one.carries = own.carries;
    one.zone = zone_for_sale(own.zone);
    kept.own.push_back(std::move(one));
  }
  return kept;
}

std::string name_for_sale(const weighing::Spot& spot, const body::Plan& plan) {
  if (spot.is_repair || spot.name.empty()) return "";
  const body::Zone* zone = spot.own.empty() ? plan.zone(spot.zone) : nullptr;
  const bool of_plan =
      zone != nullptr && std::ranges::any_of(zone->stations, [&](const body::Station& station) {
        return station.name == spot.name;
      });
  return of_plan ? spot.name : another_place;
}

weighing::Zone weighed_for_sale(const weighing::Zone& zone, const body::Plan& plan) {
  weighing::Zone kept = zone;  // words of the plan and of the method, but for:
  if (!kept.own.empty()) kept.name = own_part;
  kept.seen.reason.clear();
  if (kept.metal) kept.metal->budget.clear();
  for (weighing::Spot& spot : kept.spots) {
    spot.name = name_for_sale(spot, plan);
    spot.metal.budget.clear();
  }
  return kept;
}

std::string why_not_seen(const weighing::Zone& zone) {
  if (!zone.seen.word) return "not recorded";
  if (zone.seen.word == survey::SeenWord::tap) return "tapped or felt only";
  return zone.seen.by ? std::string(meaning(*zone.seen.by)) : "covered";
}

}  // namespace

weighing::Result for_sale(const weighing::Result& result, bool signed_name) {
  weighing::Result kept;
  kept.body = result.body;
  kept.survey = survey_for_sale(result.survey, signed_name);
  kept.sha256 = result.sha256;
  kept.constants = result.constants;
  kept.rules_changed = result.rules_changed;
  kept.verdict = result.verdict;
  kept.could_be = result.could_be;
  kept.open_up_first = result.open_up_first;
  kept.main = result.main;
  kept.local = result.local;
  kept.skin_seen = result.skin_seen;
  for (const weighing::Zone& zone : result.zones)
    kept.zones.push_back(weighed_for_sale(zone, *result.body));
  for (const weighing::OpenUp& open : result.open_up)
    kept.open_up.push_back({open.zone, open.own, open.rule, {}, open.could_become});
  for (const weighing::NotSeen& each : result.not_seen) {
    const weighing::Zone* zone = each.zone == 0 ? nullptr : result.zone(each.zone);
    if (zone != nullptr) kept.not_seen.push_back({each.zone, why_not_seen(*zone), ""});
  }
  kept.caution = result.caution;
  return kept;
}

}  // namespace tinworm::scene
