#include "output/work_text.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/display_width.hpp"
#include "output/figures.hpp"
#include "output/work_figures.hpp"
#include "output/work_tasks_text.hpp"
#include "output/zone_text.hpp"

namespace tinworm::output {
namespace {

using weighing::Result;
using work::Plan;

std::string bullet(const std::string& text, const TextStyle& style) {
  return indented(text, style.width, "  - ", "    ");
}

std::string section(const std::string& title, const std::string& lines, const TextStyle& style) {
  return lines.empty() ? "" : "\n" + heading(title, style) + "\n" + lines;
}

std::string opening(const Result& result, const Plan& plan, const TextStyle& style) {
  const std::string currency = plan.rates.currency;
  std::string first =
      plan.tasks.empty()
          ? "Plan of work: nothing was found that asks for it where looked."
          : fmt::format(
                "Plan of work: about {} h, {} {}; by these assumptions not over {} {} in 80 "
                "of 100 such cases, contingency and doubts apart.",
                hours_text(plan.hours.mean), money_text(plan.cost.mean), currency,
                money_text(plan.cost.in_80_of_100), currency);
  std::string text = indented(first, style.width, "", "");
  const std::string what = "Plan of work";
  text.replace(0, what.size(), heading(what, style));
  std::string verdict = fmt::format("Verdict of the survey: {}.", sentence(result.verdict));
  if (result.could_be != result.verdict)
    verdict += fmt::format(" Could be: {}.", sentence(result.could_be));
  if (result.open_up_first) verdict += " Open up first: what is found may change this plan.";
  const std::string car =
      fmt::format("{}; surveyed {}", car_text(result.survey.car), result.survey.visit.date.text());
  const std::string origin = fmt::format(
      "{}, body plan {} {}, {}, fingerprint {}", result.file, result.body->name,
      result.body->version, result.rules_changed.empty() ? "default rules" : "changed rules",
      result.sha256.substr(0, 12));
  return text + indented(verdict, style.width, "", "") + indented(car, style.width, "", "") +
         indented(origin, style.width, "", "") + rules_block(result, style) +
         indented(rates_text(plan), style.width, "", "  ") +
         indented(
             "Figures are low–likely–high and rounded. They are no quote and no promise: "
             "time and material, with a stop to look and agree once it is opened, is the "
             "usual way.",
             style.width, "", "");
}

// What is to be looked into before anything is cut; the tasks are reckoned without it.
std::string opening_up(const Result& result, const TextStyle& style) {
  if (!result.open_up_first) return "";
  std::vector<std::string> parts;
  for (const weighing::OpenUp& each : result.open_up)
    parts.push_back(zone_title(result, each.zone, each.own));
  return section("To open up and measure before anything is cut: then reckon anew",
                 indented(fmt::format("{}", fmt::join(parts, "; ")), style.width, "  ", "  "),
                 style);
}

std::string totals(const Plan& plan, const TextStyle& style) {
  if (plan.tasks.empty()) return "";
  const auto row = [&](const char* name, double hours, double money) {
    return Row{name, hours_text(hours), money_text(money)};
  };
  std::string text =
      table({{"together"}, {"h", Align::right}, {plan.rates.currency, Align::right}},
            {row("sure to be done, mean", plan.sure.hours.mean, plan.sure.cost.mean),
             row("if opening shows it, mean", plan.if_opening_shows.hours.mean,
                 plan.if_opening_shows.cost.mean),
             row("all at the low figure", plan.hours.sum.low, plan.cost.sum.low),
             row("all of it, mean", plan.hours.mean, plan.cost.mean),
             row("not exceeded in 80 of 100", plan.hours.in_80_of_100, plan.cost.in_80_of_100),
             row("all at the high figure", plan.hours.sum.high, plan.cost.sum.high)},
            style.width);
  text += indented(
      fmt::format("Contingency, apart: {:.0f} to {:.0f} %, {} to {} {} ({}; {}).",
                  100 * plan.contingency->share.low, 100 * plan.contingency->share.high,
                  money_text(plan.contingency->cost.low), money_text(plan.contingency->cost.high),
                  plan.rates.currency, plan.contingency->state, "from memory of the trade"),
      style.width, "  ", "  ");
  text += indented(fmt::format("Not counted: {}.", fmt::join(plan.not_counted, "; ")), style.width,
                   "  ", "  ");
  return section("What it may take", text, style);
}

std::string order_notes(const Plan& plan, const TextStyle& style) {
  std::string lines;
  for (const std::string& note : plan.order_notes) lines += bullet("Order: " + note + ".", style);
  return lines;
}

std::string doubts(const Plan& plan, const TextStyle& style) {
  if (plan.doubts.empty()) return "";
  std::vector<Row> rows;
  for (const work::Doubt& doubt : plan.doubts)
    rows.push_back({part_title(doubt.zone, doubt.own, doubt.name, doubt.side), doubt.why,
                    hours_span(doubt.hours), money_span(doubt.cost)});
  std::string text =
      table({{"part"}, {"why"}, {"h if rotten", Align::right}, {plan.rates.currency, Align::right}},
            rows, style.width);
  text += indented(fmt::format("All of it together, if all of it were rotten: {} {} on top. What "
                               "wasn't seen is not known.",
                               money_span(plan.doubts_cost), plan.rates.currency),
                   style.width, "  ", "  ");
  return section("What could double it: in no figure above", text, style);
}

std::string sheets(const Plan& plan, const TextStyle& style) {
  std::vector<Row> rows;
  for (const work::Sheet& sheet : plan.sheets)
    rows.push_back({stock_text(sheet.thickness_mm, style.units),
                    sheet_text(sheet.original_mm, style.units),
                    area_text(sheet.area_m2, style.units), figure_span(sheet.mass_kg, 1) + " kg"});
  return section("Sheet to buy, mild steel, cutting allowance in it",
                 table({{"sheet", Align::right},
                        {"original up to", Align::right},
                        {"area", Align::right},
                        {"mass", Align::right}},
                       rows, style.width),
                 style);
}

std::string cautions(const Plan& plan, const TextStyle& style) {
  std::string lines;
  for (const work::Caution& caution : plan.cautions)
    lines += bullet(fmt::format("{} (tasks {})", caution.text, runs(caution.tasks)), style);
  return section("What can hurt", lines, style);
}

std::string assumptions(const Plan& plan, const TextStyle& style) {
  std::vector<Row> rows;
  const rates::Rates standard;
  for (const rates::Rate* rate : plan.rates_used) {
    const bool own = value(plan.rates, *rate) != value(standard, *rate);
    rows.push_back({rate->key, rates::value_text(plan.rates, *rate),
                    own ? "yours" : std::string(rules::word(rate->standing)), rate->what});
  }
  return section("Assumptions: set your own with --rates",
                 table({{"rate"}, {"value"}, {"standing"}, {"what"}}, rows, style.width), style);
}

}  // namespace

std::string rates_text(const Plan& plan) {
  if (plan.rates_changed.empty())
    return "Rates: defaults, all of them assumptions: hours from memory of the trade, prices a "
           "guess. "
           "Set your own with --rates.";
  const std::string name = plan.rates_name.empty() ? "" : ", " + plan.rates_name;
  return fmt::format("Rates ({}{}): {}. All others are assumptions.", plan.rates_file, name,
                     fmt::join(plan.rates_changed, "; "));
}

std::string work_text(const Result& result, const Plan& plan, const TextStyle& style) {
  return opening(result, plan, style) + totals(plan, style) + opening_up(result, style) +
         section("To cut and weld (numbers are the order of work)",
                 heavy_tasks(plan, false, style) + order_notes(plan, style), style) +
         section("If opening shows it: only judged so far (in the same order of work)",
                 heavy_tasks(plan, true, style), style) +
         section("To clean, treat, coat and wax, and drains", light_tasks(plan, style), style) +
         doubts(plan, style) + sheets(plan, style) + cautions(plan, style) +
         assumptions(plan, style) + "\n" + indented(result.caution, style.width, "", "");
}

std::vector<Column> work_line_columns(const std::string& currency) {
  return {{"survey"},
          {"date"},
          {"tasks", Align::right},
          {"h", Align::right},
          {"80 of 100", Align::right},
          {currency, Align::right},
          {"80 of 100", Align::right},
          {"could come on top", Align::right}};
}

Row work_line(const Result& result, const Plan& plan) {
  return {result.file,
          result.survey.visit.date.text(),
          fmt::format("{}", plan.tasks.size()),
          hours_text(plan.hours.mean),
          hours_text(plan.hours.in_80_of_100),
          money_text(plan.cost.mean),
          money_text(plan.cost.in_80_of_100),
          money_text(plan.doubts_cost.high)};
}

}  // namespace tinworm::output
