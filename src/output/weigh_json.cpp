#include "output/weigh_json.hpp"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "output/figures.hpp"
#include "survey/told.hpp"
#include "weighing/holes.hpp"
#include "weighing/looks.hpp"

namespace tinworm::output {
namespace {

using nlohmann::ordered_json;

ordered_json number(std::optional<double> value) {
  return value ? ordered_json(rounded(*value)) : ordered_json();
}

ordered_json whole(std::optional<int> value) {
  return value ? ordered_json(*value) : ordered_json();
}

ordered_json text_or_null(std::string_view text) {
  return text.empty() ? ordered_json() : ordered_json(text);
}

// An own zone has its key where others have a number; the whole car has null.
ordered_json zone_name(int number, const std::string& own) {
  return number != 0 ? ordered_json(number) : text_or_null(own);
}

ordered_json span(const weighing::Span& of) {
  return {{"value", rounded(of.value)}, {"low", rounded(of.low)}, {"high", rounded(of.high)}};
}

ordered_json span(const std::optional<weighing::Span>& of) {
  return of ? span(*of) : ordered_json();
}

ordered_json metal_left(const weighing::MetalLeft& metal) {
  ordered_json json = span(metal.shown);
  json["kind"] = word(metal.kind);
  json["baseline_mm"] = number(metal.baseline_mm);
  json["baseline_from"] = word(metal.baseline_from);
  json["weighed"] = span(metal.weighed);
  json["mean_mm"] = number(metal.mean_mm);
  json["least_mm"] = number(metal.least_mm);
  json["readings"] = metal.readings;
  json["remarks"] = metal.remarks;
  return json;
}

ordered_json burden(const weighing::Burden& of) {
  ordered_json json = {
      {"value", number(of.value)}, {"low", rounded(of.low)}, {"high", rounded(of.high)}};
  if (!of.value) json["why"] = of.why;
  return json;
}

ordered_json coverage(const weighing::Coverage& of) {
  return {{"area_share", rounded(of.area_share)}, {"measured_share", rounded(of.measured_share)}};
}

// `step_low` is the step at the low end of the metal left: the worst it may be.
template <class Place>
void add_steps(ordered_json& json, const Place& place) {
  json["evidence"] = word(place.evidence);
  json["step"] = word(place.step);
  json["step_low"] = word(place.step_low);
  json["step_high"] = word(place.step_high);
}

ordered_json holes(const std::vector<survey::Size>& of) {
  if (of.empty()) return {};
  return {{"count", of.size()}, {"largest_mm", rounded(weighing::largest_mm(of))}};
}

ordered_json spot_json(const weighing::Spot& spot) {
  ordered_json json = {{"spot", spot.name},
                       {"rank", spot.rank > 0 ? ordered_json(spot.rank) : ordered_json()},
                       {"rust", text_or_null(spot.rust)}};
  json["holes"] = holes(spot.holes);
  json["stuffed"] = spot.stuffed ? ordered_json(word(*spot.stuffed)) : ordered_json();
  json["near"] = text_or_null(spot.near_what);
  json["near_how"] = word(spot.near);
  json["near_mm"] = spot.near_what.empty() ? ordered_json() : number(spot.near_mm);
  json["pinhole"] = spot.signs.pinhole;
  json["metal_left"] = metal_left(spot.metal);
  json["pit_left"] = number(spot.metal.pit_left);
  json["pit_left_low"] = number(spot.metal.pit_left_low);
  add_steps(json, spot);
  json["damage"] = rounded(spot.damage);
  json["share_of_length"] = rounded(spot.share_of_length);
  json["weight"] = span(spot.weight);
  json["found"] = spot.found;
  json["repair"] = spot.is_repair;
  return json;
}

// What the survey tells of the zone as a whole, as it is written: null where it tells nothing.
void add_told(ordered_json& json, const weighing::Result& result, const weighing::Zone& zone) {
  const survey::OwnZone* own = result.survey.own_zone(zone.own);
  const survey::Zone* recorded = result.survey.zone(zone.number, zone.own);
  ordered_json told = ordered_json::object();
  if (recorded != nullptr)
    for (const survey::Told& each : survey::told_of_zone(*recorded))
      told[std::string(each.key)] = each.text;
  if (own != nullptr && !survey::told_of_own(*own).empty()) told["own"] = survey::told_of_own(*own);
  json["told"] = told.empty() ? ordered_json() : told;
}

ordered_json told_of_car(const survey::Survey& survey) {
  ordered_json told = ordered_json::object();
  for (const survey::Told& each : survey::told_of_car(survey, survey::Reader::anybody))
    told[std::string(each.key)] = each.text;
  return told;
}

ordered_json gaps(const survey::Survey& survey) {
  ordered_json json = ordered_json::array();
  for (const survey::Gap& gap : survey.gaps)
    json.push_back({{"where", gap.where},
                    {"side", gap.side ? ordered_json(body::word(*gap.side)) : ordered_json()},
                    {"kind", word(gap.kind)},
                    {"wheels_mm", number(gap.wheels_mm)},
                    {"lift_mm", number(gap.lift_mm)}});
  return json;
}

ordered_json opened(const survey::Survey& survey) {
  ordered_json json = ordered_json::array();
  for (const survey::Opened& cut : survey.opened)
    json.push_back({{"zone", zone_name(cut.zone, cut.own)},
                    {"spot", cut.where},
                    {"date", cut.date ? ordered_json(cut.date->text()) : ordered_json()},
                    {"metal_mm", cut.metal_mm},
                    {"say", text_or_null(cut.say)}});
  return json;
}

const std::vector<survey::Repair>* repairs_of(const weighing::Result& result,
                                              const weighing::Zone& zone) {
  for (const survey::OwnZone& own : result.survey.own) {
    if (zone.number == 0 && own.key == zone.own) return &own.zone.repairs;
  }
  const auto found = result.survey.zones.find(zone.number);
  return found == result.survey.zones.end() ? nullptr : &found->second.repairs;
}

ordered_json repairs_json(const weighing::Result& result, const weighing::Zone& zone) {
  ordered_json json = ordered_json::array();
  const std::vector<survey::Repair>* recorded = repairs_of(result, zone);  // in the same order
  for (std::size_t i = 0; i < zone.repairs.size(); ++i) {
    const weighing::Repair& repair = zone.repairs[i];
    const bool known = recorded != nullptr && i < recorded->size();
    json.push_back({{"spot", known ? text_or_null((*recorded)[i].name) : ordered_json()},
                    {"kind", known ? ordered_json(word((*recorded)[i].kind)) : ordered_json()},
                    {"reliable", repair.reliable ? ordered_json(*repair.reliable) : ordered_json()},
                    {"text", repair.text},
                    {"why", repair.why}});
  }
  return json;
}

ordered_json film(const std::optional<weighing::Film>& of) {
  if (!of) return {};
  return {{"median_um", rounded(of->median_um)},
          {"least_um", rounded(of->least_um)},
          {"greatest_um", rounded(of->greatest_um)},
          {"greatest_off_scale", of->off_scale},
          {"reading", of->reading}};
}

std::string why_no_metal(const weighing::Zone& zone) {
  if (!zone.fitted) return "not fitted";
  return zone.seen.reason.empty() ? "not seen" : "not seen: " + zone.seen.reason;
}

ordered_json zone_json(const weighing::Result& result, const weighing::Zone& zone) {
  ordered_json json = {{"zone", zone_name(zone.number, zone.own)},
                       {"name", zone.name},
                       {"side", body::word(zone.side)},
                       {"role", body::word(zone.role)},
                       {"seen", zone.seen.word ? word(*zone.seen.word) : "not-seen"},
                       {"seen_share", rounded(zone.seen_share)},
                       {"inside", text_or_null(zone.inside)}};
  add_steps(json, zone);
  json["near"] = text_or_null(zone.near);
  json["metal_left"] = zone.metal ? metal_left(*zone.metal) : ordered_json();
  if (!zone.metal) json["why"] = why_no_metal(zone);
  json["rusted_share"] = number(zone.rusted_share);
  json["iso4628_3"] = whole(zone.iso4628_3);
  json["astm_d610"] = whole(zone.astm_d610);
  json["damage"] = number(zone.damage);
  json["weight"] = span(zone.weight);
  json["share"] = result.shell.value ? ordered_json(rounded(zone.share)) : ordered_json();
  json["film"] = film(zone.film);
  json["spots"] = ordered_json::array();
  for (const weighing::Spot& spot : zone.spots) json["spots"].push_back(spot_json(spot));
  json["repairs"] = repairs_json(result, zone);
  add_told(json, result, zone);
  return json;
}

ordered_json reasons_json(const std::vector<weighing::Reason>& reasons) {
  ordered_json json = ordered_json::array();
  for (const weighing::Reason& reason : reasons) {
    json.push_back({{"zone", zone_name(reason.zone, reason.own)},
                    {"spot", text_or_null(reason.spot)},
                    {"text", reason.text},
                    {"rule", reason.rule},
                    {"source", reason.source}});
  }
  return json;
}

ordered_json verdict(const weighing::Result& result) {
  return {{"word", word(result.verdict)},
          {"could_be", word(result.could_be)},
          {"open_up_first", result.open_up_first},
          {"reasons", reasons_json(result.reasons)},
          {"also_to_mend", reasons_json(result.also_to_mend)},
          {"open_reasons", reasons_json(result.open_reasons)}};
}

ordered_json section(const std::optional<weighing::SectionLeft>& of) {
  if (!of) return {};
  ordered_json walls = ordered_json::array();
  for (const weighing::WallLeft& wall : of->walls)
    walls.push_back({{"zone", wall.zone},
                     {"width_mm", rounded(wall.width_mm)},
                     {"sheet_mm", rounded(wall.sheet_mm)},
                     {"gone_mm", rounded(wall.gone_mm)},
                     {"left", rounded(wall.left)}});
  return {{"left", span(of->left)},       {"from_mm", rounded(of->from_mm)},
          {"to_mm", rounded(of->to_mm)},  {"limit", rounded(of->limit)},
          {"all_layers", of->all_layers}, {"gone", of->gone},
          {"may_go", of->may_go},         {"walls", walls}};
}

ordered_json boxes(const weighing::Result& result) {
  ordered_json json = ordered_json::array();
  for (const weighing::BoxResult& box : result.boxes) {
    json.push_back({{"name", box.name},
                    {"section", section(box.section)},
                    {"twist_kept", span(box.twist_kept)},
                    {"bending_kept", span(box.bending_kept)},
                    {"withheld", text_or_null(box.withheld)}});
  }
  return json;
}

ordered_json open_up(const weighing::Result& result) {
  ordered_json json = ordered_json::array();
  for (const weighing::OpenUp& open : result.open_up) {
    json.push_back({{"zone", zone_name(open.zone, open.own)},
                    {"why", open.why},
                    {"could_become", word(open.could_become)},
                    {"rule", open.rule},
                    {"opening", text_or_null(open.opening)},
                    {"minutes", open.minutes > 0 ? ordered_json(open.minutes) : ordered_json()},
                    {"structure_high_if_no_worse", rounded(open.structure_high_if_no_worse)},
                    {"structure_low_if_gone", rounded(open.structure_low_if_gone)}});
  }
  return json;
}

// One entry for each thing to open, its minutes once for all that it shows.
ordered_json looks_json(const weighing::Result& result) {
  ordered_json json = ordered_json::array();
  for (const weighing::Look& look : weighing::looks(result)) {
    ordered_json zones = ordered_json::array();
    for (const weighing::OpenUp* open : look.shows)
      zones.push_back(zone_name(open->zone, open->own));
    json.push_back({{"opening", text_or_null(look.opening)},
                    {"minutes", look.minutes > 0 ? ordered_json(look.minutes) : ordered_json()},
                    {"zones", zones},
                    {"could_become", word(look.could_become)},
                    {"structure_moves", rounded(look.moves)}});
  }
  return json;
}

ordered_json not_seen(const weighing::Result& result) {
  ordered_json json = ordered_json::array();
  for (const weighing::NotSeen& zone : result.not_seen) {
    json.push_back({{"zone", zone_name(zone.zone, zone.own)}, {"why", zone.why}});
  }
  return json;
}

ordered_json questions(const std::vector<weighing::Advice>& advice) {
  ordered_json json = ordered_json::array();
  for (const weighing::Advice& each : advice) json.push_back(text(each));
  return json;
}

ordered_json also(const survey::Survey& survey) {
  ordered_json json = ordered_json::array();
  for (const survey::Also& item : survey.also) {
    json.push_back({{"what", item.what},
                    {"matter", word(item.matter)},
                    {"code", text_or_null(item.code)},
                    {"say", text_or_null(item.say)},
                    {"when", text_or_null(survey::when_word(item))}});
  }
  return json;
}

}  // namespace

nlohmann::ordered_json weigh_json(const weighing::Result& result) {
  const survey::Car& car = result.survey.car;
  ordered_json json = {{"tinworm", TINWORM_VERSION},
                       {"kind", "weigh"},
                       {"file", result.file},
                       {"sha256", result.sha256}};
  json["body"] = {{"name", result.body->name}, {"version", result.body->version}};
  json["rules"] = result.rules;
  if (!result.rules_name.empty()) json["rules_name"] = result.rules_name;
  if (!result.rules_changed.empty()) json["rules_changed"] = result.rules_changed;
  json["date"] = result.survey.visit.date.text();
  json["car"] = {{"name", car.name},
                 {"built", whole(car.built)},
                 {"odometer_km", number(car.odometer_km)},
                 {"odometer", text_or_null(car.odometer)}};
  json["told"] = told_of_car(result.survey);
  json["verdict"] = verdict(result);
  json["burden"] = {{"structure", burden(result.structure)},
                    {"skin", burden(result.skin)},
                    {"shell", burden(result.shell)},
                    {"one_zone_gone", rounded(result.one_zone_gone)}};
  json["seen"] = {{"main", coverage(result.main)},
                  {"local", coverage(result.local)},
                  {"skin", coverage(result.skin_seen)}};
  json["zones"] = ordered_json::array();
  for (const weighing::Zone& zone : result.zones) json["zones"].push_back(zone_json(result, zone));
  json["boxes"] = boxes(result);
  json["open_up"] = open_up(result);
  json["looks"] = looks_json(result);
  json["not_seen"] = not_seen(result);
  json["questions"] = questions(result.advice);
  json["gaps"] = gaps(result.survey);
  json["opened"] = opened(result.survey);
  json["also"] = also(result.survey);
  json["caution"] = result.caution;
  return json;
}

std::string json_text(const nlohmann::ordered_json& document, Lines lines) {
  const int indent = lines == Lines::many ? 2 : -1;
  return document.dump(indent, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace tinworm::output
