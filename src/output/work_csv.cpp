#include "output/work_csv.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/csv.hpp"
#include "output/figures.hpp"
#include "output/work_text.hpp"
#include "output/zone_text.hpp"
#include "weighing/words.hpp"

namespace tinworm::output {
namespace {

using Cells = std::vector<std::string>;

constexpr const char* titles[] = {"file",
                                  "date",
                                  "row",
                                  "task",
                                  "zone",
                                  "name",
                                  "side",
                                  "kind",
                                  "for",
                                  "what",
                                  "after",
                                  "hours_low",
                                  "hours_likely",
                                  "hours_high",
                                  "cost_low",
                                  "cost_likely",
                                  "cost_high",
                                  "currency",
                                  "weld_low_m",
                                  "weld_likely_m",
                                  "weld_high_m",
                                  "sheet_mm",
                                  "sheet_low_m2",
                                  "sheet_likely_m2",
                                  "sheet_high_m2",
                                  "hidden_factor",
                                  "rates",
                                  "rules",
                                  "if_opening_shows",
                                  "questions"};

std::string number(double value) {
  return fmt::format("{}", rounded(value));
}

void add(Cells& cells, const work::Range& range) {
  for (const double each : {range.low, range.likely, range.high}) cells.push_back(number(each));
}

void add_blanks(Cells& cells, int count) {
  for (; count > 0; --count) cells.emplace_back();
}

work::Range alike(double value) {
  return {value, value, value};
}

class Rows {
 public:
  Rows(const weighing::Result& result, const work::Plan& plan)
      : result_(result), plan_(plan), rules_(weighing::rules_text(result)) {}

  std::string all() {
    for (const work::Task& task : plan_.tasks) add_task(task);
    const work::Total &hours = plan_.hours, &cost = plan_.cost;
    add_sum("total", "sum of each figure", hours.sum, cost.sum);
    add_sum("total", "mean", alike(hours.mean), alike(cost.mean));
    add_sum("total", "mean of what is sure", alike(plan_.sure.hours.mean),
            alike(plan_.sure.cost.mean));
    add_sum("total", "mean of what is done only if opening shows it",
            alike(plan_.if_opening_shows.hours.mean), alike(plan_.if_opening_shows.cost.mean));
    add_sum("total", "not exceeded in 80 of 100", alike(hours.in_80_of_100),
            alike(cost.in_80_of_100));
    if (plan_.contingency)
      add_sum("contingency", plan_.contingency->state, std::nullopt, plan_.contingency->cost);
    for (const work::Doubt& doubt : plan_.doubts) add_doubt(doubt);
    return std::move(text_);
  }

 private:
  Cells start(const char* row) const {
    return {result_.file, result_.survey.visit.date.text(), row};
  }

  void finish(Cells cells, const work::Task* task = nullptr) {
    cells.push_back(plan_.rates_changed.empty() ? "defaults: assumptions" : rates_text(plan_));
    cells.push_back(rules_.empty() ? "default" : rules_);
    cells.emplace_back(!task ? "" : task->judged ? "true" : "false");
    cells.push_back(task ? fmt::format("{}", fmt::join(task->questions, " ")) : "");
    text_ += csv_record(cells);
  }

  void add_task(const work::Task& task) {
    Cells cells = start("task");
    cells.push_back(fmt::format("{}", task.number));
    cells.push_back(task.name.empty() ? "" : zone_number(task.zone, task.own));
    cells.push_back(task.name);
    cells.emplace_back(task.name.empty() ? "" : body::word(task.side));
    cells.emplace_back(word(task.kind));
    cells.emplace_back(word(task.urgency));
    cells.push_back(task.what);
    cells.push_back(fmt::format("{}", fmt::join(task.after, " ")));
    add(cells, task.hours);
    add(cells, task.cost);
    cells.push_back(plan_.rates.currency);
    add(cells, task.weld_m);
    if (task.sheet) {
      cells.push_back(number(task.sheet->thickness_mm));
      add(cells, task.sheet->area_m2);
    } else {
      add_blanks(cells, 4);
    }
    cells.push_back(number(task.hidden));
    finish(std::move(cells), &task);
  }

  void add_sum(const char* row, const std::string& what, const std::optional<work::Range>& hours,
               const work::Range& cost) {
    Cells cells = start(row);
    add_blanks(cells, 6);
    cells.push_back(what);
    add_blanks(cells, 1);
    hours ? add(cells, *hours) : add_blanks(cells, 3);
    add(cells, cost);
    cells.push_back(plan_.rates.currency);
    add_blanks(cells, 8);
    finish(std::move(cells));
  }

  void add_doubt(const work::Doubt& doubt) {
    Cells cells = start("could come on top");
    add_blanks(cells, 1);
    cells.push_back(zone_number(doubt.zone, doubt.own));
    cells.push_back(doubt.name);
    cells.emplace_back(body::word(doubt.side));
    add_blanks(cells, 2);
    cells.push_back(doubt.why);
    add_blanks(cells, 1);
    add(cells, doubt.hours);
    add(cells, doubt.cost);
    cells.push_back(plan_.rates.currency);
    add_blanks(cells, 8);
    finish(std::move(cells));
  }

  const weighing::Result& result_;
  const work::Plan& plan_;
  std::string rules_, text_;
};

}  // namespace

std::string work_csv_header() {
  return csv_record({std::begin(titles), std::end(titles)});
}

std::string work_csv_rows(const weighing::Result& result, const work::Plan& plan) {
  return Rows(result, plan).all();
}

}  // namespace tinworm::output
