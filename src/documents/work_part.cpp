#include "documents/work_part.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/parts.hpp"
#include "output/figures.hpp"
#include "output/work_figures.hpp"
#include "output/work_tasks_text.hpp"
#include "output/work_text.hpp"
#include "rates/rates.hpp"
#include "scene/naming.hpp"

namespace tinworm::documents {
namespace {

using output::hours_span;
using output::hours_text;
using output::money_span;
using output::money_text;
using work::Plan;
using work::Task;

std::string rates_words(const Plan& plan) {
  if (!plan.rates_changed.empty()) return output::rates_text(plan);
  return "Rates: all of them assumptions: hours from memory of the trade, prices a guess.";
}

// What may change the plan; nothing of it is in its figures.
void write_to_open(Flow& flow, const weighing::Result& result) {
  if (!result.open_up_first) return;
  std::vector<std::string> parts;
  for (const weighing::OpenUp& each : result.open_up)
    parts.push_back(title_of(result, each.zone, each.own));
  flow.heading("Before anything is cut: open up and measure, then reckon anew");
  flow.paragraph(fmt::format("{}.", fmt::join(parts, "; ")), small_style);
}

void write_totals(Flow& flow, const Plan& plan) {
  const auto row = [](const char* name, double hours, double money, bool strong = false) {
    return Row{{name, hours_text(hours), money_text(money)}, "", "", strong};
  };
  flow.table({{"together", 3},
              {"hours", 1, scene::Align::right},
              {plan.rates.currency, 1, scene::Align::right}},
             {row("sure to be done, mean", plan.sure.hours.mean, plan.sure.cost.mean),
              row("if opening shows it, mean", plan.if_opening_shows.hours.mean,
                  plan.if_opening_shows.cost.mean),
              row("all at the low figure", plan.hours.sum.low, plan.cost.sum.low),
              row("all of it, mean", plan.hours.mean, plan.cost.mean, true),
              row("not exceeded in 80 of 100 such cases", plan.hours.in_80_of_100,
                  plan.cost.in_80_of_100, true),
              row("all at the high figure", plan.hours.sum.high, plan.cost.sum.high)});
  if (plan.contingency)
    flow.paragraph(
        fmt::format("Contingency, apart: {:.0f} to {:.0f} %, {} to {} {} ({}; from memory of the "
                    "trade).",
                    100 * plan.contingency->share.low, 100 * plan.contingency->share.high,
                    money_text(plan.contingency->cost.low), money_text(plan.contingency->cost.high),
                    plan.rates.currency, plan.contingency->state),
        small_style);
  flow.paragraph(fmt::format("Not counted: {}.", fmt::join(plan.not_counted, "; ")), small_style);
  flow.paragraph(rates_words(plan), small_style);
  flow.paragraph(
      "Figures are low–likely–high and rounded. They are no quote and no promise: time "
      "and material, with a stop to look and agree once it is opened, is the usual way.",
      small_style);
}

std::string what_of(const Task& task, quantity::Units units) {
  if (task.kind == work::Kind::treat)
    return fmt::format("clean, treat, coat and wax: {}", fmt::join(task.treated, ", "));
  std::string text;
  for (const std::string& line : output::task_lines(task, units))
    text += (text.empty() ? "" : "; ") + line;
  return text;
}

Row row_of(const Task& task, quantity::Units units) {
  const std::string part = output::part_title(task.zone, task.own, task.name, task.side);
  return {{fmt::format("{}", task.number), part, std::string(output::urgency_text(task.urgency)),
           what_of(task, units), hours_span(task.hours), money_span(task.cost)},
          "",
          "",
          false};
}

void write_tasks(Flow& flow, const Plan& plan, bool judged, const char* heading,
                 quantity::Units units) {
  std::vector<Row> rows;
  for (const Task& task : plan.tasks)
    if (task.judged == judged) rows.push_back(row_of(task, units));
  if (rows.empty()) return;
  flow.heading(heading);
  flow.table({{"no", 0.4},
              {"part", 1.5},
              {"for", 1},
              {"what", 4},
              {"hours", 1, scene::Align::right},
              {plan.rates.currency, 1.3, scene::Align::right}},
             rows);
}

void write_doubts(Flow& flow, const Plan& plan) {
  if (plan.doubts.empty()) return;
  std::vector<Row> rows;
  for (const work::Doubt& doubt : plan.doubts)
    rows.push_back({{output::part_title(doubt.zone, doubt.own, doubt.name, doubt.side), doubt.why,
                     hours_span(doubt.hours), money_span(doubt.cost)},
                    "",
                    "",
                    false});
  rows.push_back({{"all of it together", "", "", money_span(plan.doubts_cost)}, "", "", true});
  flow.heading("What could double it: in no figure above");
  flow.table({{"part", 2},
              {"why", 2.8},
              {"hours if rotten", 1.2, scene::Align::right},
              {plan.rates.currency, 1.8, scene::Align::right}},
             rows);
}

void write_sheets(Flow& flow, const Plan& plan, quantity::Units units) {
  if (plan.sheets.empty()) return;
  std::vector<Row> rows;
  for (const work::Sheet& sheet : plan.sheets)
    rows.push_back(
        {{output::stock_text(sheet.thickness_mm, units),
          output::sheet_text(sheet.original_mm, units), output::area_text(sheet.area_m2, units),
          output::figure_span(sheet.mass_kg, 1) + " kg"},
         "",
         "",
         false});
  flow.heading("Sheet to buy: mild steel, cutting allowance in it");
  flow.table({{"sheet", 1, scene::Align::right},
              {"for an original up to", 1, scene::Align::right},
              {"area", 1.4, scene::Align::right},
              {"mass", 1.4, scene::Align::right}},
             rows);
}

void write_cautions(Flow& flow, const Plan& plan) {
  if (plan.cautions.empty()) return;
  flow.heading("What can hurt");
  for (const work::Caution& caution : plan.cautions)
    flow.item(
        fmt::format("{} (tasks {})", scene::capitalised(caution.text), output::runs(caution.tasks)),
        "", small_style);
}

}  // namespace

void write_work(Flow& flow, const weighing::Result& result, const Plan& plan,
                quantity::Units units) {
  flow.section("Plan of work", "work");
  if (plan.tasks.empty())
    flow.paragraph("Nothing was found that asks for work where looked.");
  else
    write_totals(flow, plan);
  write_cautions(flow, plan);
  write_to_open(flow, result);
  write_tasks(flow, plan, false, "Tasks in order", units);
  for (const std::string& note : plan.order_notes)
    flow.paragraph(fmt::format("Order: {}.", note), small_style);
  write_tasks(flow, plan, true, "If opening shows it: only judged so far, in the same order",
              units);
  write_doubts(flow, plan);
  write_sheets(flow, plan, units);
}

void write_assumptions(Flow& flow, const Plan& plan) {
  if (plan.rates_used.empty()) return;
  std::vector<Row> rows;
  const rates::Rates standard;
  for (const rates::Rate* rate : plan.rates_used) {
    const bool own = value(plan.rates, *rate) != value(standard, *rate);
    rows.push_back({{rate->key, rates::value_text(plan.rates, *rate),
                     own ? "yours" : std::string(rules::word(rate->standing)), rate->what},
                    "",
                    "",
                    own});
  }
  flow.heading("What hours and money rest on");
  flow.table({{"rate", 1.3}, {"value", 1.3}, {"standing", 1.1}, {"what", 4}}, rows);
}

}  // namespace tinworm::documents
