#include "output/compare_json.hpp"

#include <nlohmann/json.hpp>

#include "history/words.hpp"
#include "output/figures.hpp"

namespace tinworm::output {
namespace {

using history::Comparison;
using history::Place;
using Json = nlohmann::ordered_json;

Json number(std::optional<double> value) {
  return value ? Json(rounded(*value)) : Json();
}

Json text_or_null(std::string_view text) {
  return text.empty() ? Json() : Json(text);
}

Json zone_name(int number, const std::string& own) {
  return number != 0 ? Json(number) : text_or_null(own);
}

Json span(const std::optional<weighing::Span>& of) {
  if (!of) return {};
  return {{"value", rounded(of->value)}, {"low", rounded(of->low)}, {"high", rounded(of->high)}};
}

Json range(const metal::RateRange& of) {
  return {{"value", rounded(of.value)}, {"low", rounded(of.low)}, {"high", rounded(of.high)}};
}

Json life(const std::optional<metal::LifeRange>& of) {
  if (!of) return {};
  Json json = {{"low", rounded(of->low_years)}, {"high", number(of->high_years)}};
  if (!of->high_years) json["unbounded"] = true;
  return json;
}

Json rate(const std::optional<history::Rate>& of) {
  if (!of) return {};
  Json json = range(of->per_year);
  json["from"] = word(of->from);
  json["long_term"] = number(of->long_term);
  json["short_term"] = number(of->short_term);
  json["line"] = of->line ? range(*of->line) : Json();
  return json;
}

Json record(const history::Record& of, const Comparison& comparison) {
  Json json = {{"date", comparison.surveys[of.survey].survey.visit.date.text()},
               {"seen", of.seen},
               {"recorded", of.recorded}};
  json["metal_mm"] = of.thickness ? Json{{"value", rounded(of.thickness->metal_mm)},
                                         {"low", rounded(of.thickness->low_mm)},
                                         {"high", rounded(of.thickness->high_mm)},
                                         {"readings", of.thickness->readings}}
                                  : Json();
  json["metal_left"] = span(of.metal_left);
  json["kind"] = of.metal_left ? Json(word(of.kind)) : Json();
  json["step"] = of.recorded ? Json(word(of.step)) : Json();
  json["evidence"] = of.recorded ? Json(word(of.evidence)) : Json();
  json["repaired"] = of.repaired;
  json["change"] = of.change ? Json(word(*of.change)) : Json();
  return json;
}

Json place(const Place& of, const Comparison& comparison) {
  const auto date = [&](std::size_t survey) {
    return comparison.surveys[survey].survey.visit.date.text();
  };
  Json json = {{"spot", text_or_null(of.name)},
               {"zone_mean", of.zone_mean},
               {"change", word(of.change)},
               {"from", date(of.from)},
               {"to", date(of.to)},
               {"text", history::change_text(of, comparison, quantity::Units::mm)},
               {"why", text_or_null(of.why)}};
  json["lost_mm"] = span(of.lost_mm);
  json["lost_share"] = number(of.lost_share);
  json["baseline_mm"] = number(of.baseline_mm);
  json["baseline_assumed"] = of.baseline_assumed;
  json["smallest_visible_mm"] = number(of.smallest_visible_mm);
  json["rate_mm_per_year"] = rate(of.rate);
  const auto& outlook = of.outlook;
  json["limit_mm"] = outlook ? number(outlook->limit_mm) : Json();
  json["past_limit"] = outlook ? Json(outlook->past_limit) : Json();
  json["years_to_limit"] = outlook ? life(outlook->years_to_limit) : Json();
  json["years_to_hole"] = outlook ? life(outlook->years_to_hole) : Json();
  json["years_to_limit_at_rate"] = outlook ? number(outlook->years_to_limit_at_rate) : Json();
  json["years_to_hole_at_rate"] = outlook ? number(outlook->years_to_hole_at_rate) : Json();
  json["records"] = Json::array();
  for (const history::Record& each : of.records)
    json["records"].push_back(record(each, comparison));
  return json;
}

Json zone(const history::Zone& of, const Comparison& comparison) {
  Json json = {{"zone", zone_name(of.number, of.own)},
               {"name", of.name},
               {"side", body::word(of.side)},
               {"role", body::word(of.role)},
               {"change", word(of.change)},
               {"why", text_or_null(of.why)}};
  json["steps"] = Json::array();
  for (const weighing::Step step : of.steps) json["steps"].push_back(word(step));
  json["spots"] = Json::array();
  for (const Place& each : of.places) json["spots"].push_back(place(each, comparison));
  return json;
}

Json burden(const weighing::Burden& of) {
  return {{"value", number(of.value)}, {"low", rounded(of.low)}, {"high", rounded(of.high)}};
}

Json survey(const weighing::Result& of) {
  return {{"file", of.file},
          {"sha256", of.sha256},
          {"date", of.survey.visit.date.text()},
          {"body_version", of.body->version},
          {"odometer_km", number(of.survey.car.odometer_km)},
          {"verdict", word(of.verdict)},
          {"could_be", word(of.could_be)},
          {"open_up_first", of.open_up_first},
          {"structure_burden", burden(of.structure)},
          {"main_seen", rounded(of.main.area_share)}};
}

Json questions(const Comparison& comparison) {
  Json json = Json::array();
  for (const history::Question& each : comparison.questions)
    json.push_back({{"zone", zone_name(each.zone, each.own)},
                    {"spot", text_or_null(each.spot)},
                    {"kind", each.kind},
                    {"question", each.question},
                    {"why", each.why}});
  return json;
}

}  // namespace

Json compare_json(const Comparison& comparison) {
  const weighing::Result& last = comparison.latest();
  Json json = {{"tinworm", TINWORM_VERSION}, {"kind", "compare"}};
  json["body"] = {{"name", last.body->name}, {"version", last.body->version}};
  json["rules"] = last.rules;
  json["rules_changed"] = last.rules_changed;
  json["car"] = {{"name", last.survey.car.name},
                 {"built", last.survey.car.built ? Json(*last.survey.car.built) : Json()},
                 {"odometer_km", number(last.survey.car.odometer_km)}};
  json["surveys"] = Json::array();
  for (const weighing::Result& each : comparison.surveys) json["surveys"].push_back(survey(each));
  json["zones"] = Json::array();
  for (const history::Zone& each : comparison.zones)
    json["zones"].push_back(zone(each, comparison));
  json["next_survey"] = {
      {"date", comparison.next.date ? Json(comparison.next.date->text()) : Json()},
      {"why", comparison.next.why}};
  json["advice"] = questions(comparison);
  json["questions"] = Json::array();
  for (const history::Question& each : comparison.questions)
    json["questions"].push_back(each.question + " " + each.why);
  json["notes"] = comparison.notes;
  json["caution"] = std::string(history::planning_caution) + " " + comparison.caution;
  return json;
}

}  // namespace tinworm::output
