#include "output/work_json.hpp"

#include <nlohmann/json.hpp>

#include "output/figures.hpp"

namespace tinworm::output {
namespace {

using nlohmann::ordered_json;

ordered_json range(const work::Range& of) {
  return {{"low", rounded(of.low)}, {"likely", rounded(of.likely)}, {"high", rounded(of.high)}};
}

// An own zone has its key where others have a number; the whole car has null.
ordered_json zone_name(int number, const std::string& own) {
  if (number != 0) return number;
  return own.empty() ? ordered_json() : ordered_json(own);
}

ordered_json text_or_null(const std::string& text) {
  return text.empty() ? ordered_json() : ordered_json(text);
}

ordered_json sheet_json(const work::Sheet& sheet) {
  return {{"thickness_mm", rounded(sheet.thickness_mm)},
          {"original_mm", rounded(sheet.original_mm)},
          {"area_m2", range(sheet.area_m2)},
          {"mass_kg", range(sheet.mass_kg)}};
}

ordered_json cut_json(const work::Cut& cut) {
  return {{"places", cut.places},
          {"along_mm", range(cut.along_mm)},
          {"across_mm", range(cut.across_mm)},
          {"to_edge", cut.to_edge},
          {"certain", cut.certain},
          {"whole", cut.whole},
          {"size_assumed", cut.size_assumed},
          {"placed", cut.placed},
          {"way", word(cut.way)},
          {"crack_mm", cut.crack_mm > 0 ? ordered_json(rounded(cut.crack_mm)) : ordered_json()},
          {"plated", cut.plated}};
}

ordered_json task_json(const work::Task& task) {
  ordered_json json = {{"task", task.number},
                       {"zone", zone_name(task.zone, task.own)},
                       {"name", text_or_null(task.name)},
                       {"side", body::word(task.side)},
                       {"kind", word(task.kind)},
                       {"for", word(task.urgency)},
                       {"what", task.what},
                       {"after", task.after},
                       {"hours", range(task.hours)},
                       {"cost", range(task.cost)},
                       {"weld_m", range(task.weld_m)}};
  json["sheet"] = task.sheet ? sheet_json(*task.sheet) : ordered_json();
  json["hidden"] = {{"factor", rounded(task.hidden)}, {"why", text_or_null(task.hidden_why)}};
  json["job"] = task.cuts.empty() ? ordered_json() : ordered_json(rates::key(task.job));
  json["cuts"] = ordered_json::array();
  for (const work::Cut& cut : task.cuts) json["cuts"].push_back(cut_json(cut));
  json["treated"] = task.treated;
  json["if_opening_shows"] = task.judged;
  json["reaches"] = task.reaches != 0 ? ordered_json(task.reaches) : ordered_json();
  json["questions"] = task.questions;
  return json;
}

ordered_json total_json(const work::Total& total) {
  ordered_json json = range(total.sum);
  json["mean"] = rounded(total.mean);
  json["standard_deviation"] = rounded(total.standard_deviation);
  json["in_80_of_100"] = rounded(total.in_80_of_100);
  return json;
}

ordered_json sums_json(const work::Sums& sums) {
  return {{"hours", total_json(sums.hours)}, {"cost", total_json(sums.cost)}};
}

ordered_json contingency_json(const std::optional<work::Contingency>& of) {
  if (!of) return {};
  return {{"rate", of->rate},
          {"state", of->state},
          {"share", range(of->share)},
          {"cost", range(of->cost)}};
}

ordered_json totals_json(const work::Plan& plan) {
  ordered_json json = {{"hours", total_json(plan.hours)}, {"cost", total_json(plan.cost)}};
  json["sure"] = sums_json(plan.sure);
  json["if_opening_shows"] = sums_json(plan.if_opening_shows);
  json["contingency"] = contingency_json(plan.contingency);
  json["not_counted"] = plan.not_counted;
  json["sheets"] = ordered_json::array();
  for (const work::Sheet& sheet : plan.sheets) json["sheets"].push_back(sheet_json(sheet));
  return json;
}

ordered_json doubts_json(const work::Plan& plan) {
  ordered_json parts = ordered_json::array();
  for (const work::Doubt& doubt : plan.doubts)
    parts.push_back({{"zone", zone_name(doubt.zone, doubt.own)},
                     {"name", doubt.name},
                     {"side", body::word(doubt.side)},
                     {"why", doubt.why},
                     {"hours", range(doubt.hours)},
                     {"cost", range(doubt.cost)}});
  return {{"cost", range(plan.doubts_cost)}, {"parts", parts}};
}

ordered_json rates_json(const work::Plan& plan) {
  ordered_json json = ordered_json::array();
  const rates::Rates standard;
  for (const rates::Rate& rate : rates::table()) {
    const rates::Range now = value(plan.rates, rate);
    const bool changed = now != value(standard, rate);
    json.push_back({{"rate", rate.key},
                    {"value", range(now)},
                    {"unit", rate.unit.starts_with('%') ? "" : rate.unit},
                    {"what", rate.what},
                    {"assumption", !changed},
                    {"standing", changed ? "set by the rates file" : rules::word(rate.standing)},
                    {"source", changed ? "" : rate.source}});
  }
  return json;
}

}  // namespace

ordered_json work_json(const weighing::Result& result, const work::Plan& plan) {
  ordered_json json = {{"tinworm", TINWORM_VERSION},
                       {"kind", "work"},
                       {"file", result.file},
                       {"sha256", result.sha256}};
  json["body"] = {{"name", result.body->name}, {"version", result.body->version}};
  json["rules"] = result.rules;
  if (!result.rules_name.empty()) json["rules_name"] = result.rules_name;
  if (!result.rules_changed.empty()) json["rules_changed"] = result.rules_changed;
  json["rates"] = plan.rates_file;
  if (!plan.rates_name.empty()) json["rates_name"] = plan.rates_name;
  if (!plan.rates_changed.empty()) json["rates_changed"] = plan.rates_changed;
  json["date"] = result.survey.visit.date.text();
  json["car"] = {{"name", result.survey.car.name}};
  json["verdict"] = word(result.verdict);
  json["could_be"] = word(result.could_be);
  json["currency"] = plan.rates.currency;
  json["tasks"] = ordered_json::array();
  for (const work::Task& task : plan.tasks) json["tasks"].push_back(task_json(task));
  json["order_notes"] = plan.order_notes;
  json["totals"] = totals_json(plan);
  json["could_double"] = doubts_json(plan);
  json["cautions"] = ordered_json::array();
  for (const work::Caution& caution : plan.cautions)
    json["cautions"].push_back({{"text", caution.text}, {"tasks", caution.tasks}});
  json["assumptions"] = rates_json(plan);
  json["caution"] = result.caution;
  return json;
}

}  // namespace tinworm::output
