#include "work/plan.hpp"

#include <algorithm>
#include <functional>

#include "weighing/zone_facts.hpp"
#include "work/access.hpp"
#include "work/cautions.hpp"
#include "work/doubts.hpp"
#include "work/job.hpp"
#include "work/order.hpp"
#include "work/reckon.hpp"
#include "work/task.hpp"
#include "work/totals.hpp"

namespace tinworm::work {
namespace {

using weighing::ZoneFacts;

Task whole_car(Kind kind, Urgency urgency, const Range& hours, const char* what,
               const rates::Rates& rates) {
  Task task;
  task.kind = kind;
  task.urgency = urgency;
  task.hours = hours;
  task.cost = cost(hours, {}, rates);
  task.what = what;
  return task;
}

bool is_welded(const Task& task) {
  return task.kind == Kind::cut || task.kind == Kind::access;
}

void add_for_the_whole(std::vector<Task>& tasks, const rates::Rates& rates) {
  const std::vector<Task> parts = tasks;
  const auto is_any = [&](auto holds) { return std::ranges::any_of(parts, holds); };
  // Where only judged places ask for it, it falls away with them.
  const auto add = [&](auto holds, Task task) {
    if (!is_any(holds)) return;
    task.judged = !is_any([&](const Task& each) { return holds(each) && !each.judged; });
    tasks.push_back(std::move(task));
  };
  const auto is_sill_cut = [](const Task& task) { return is_welded(task) && is_sill(task.job); };
  add(is_sill_cut,
      whole_car(
          Kind::brace, Urgency::stiffness, rates.brace,
          "before a sill is cut: record gaps and diagonals, hang the doors and set their gaps, "
          "then brace across the door openings; one side at a time, one layer at a time; braces "
          "out only when all is cool and the gaps are checked",
          rates));
  add(is_welded, whole_car(Kind::protect, Urgency::looks, rates.protect,
                           "seal the seams, prime and coat both faces, wax every box that was "
                           "welded, coat the underside; leave the drains open",
                           rates));
}

template <class Counts>
Sums sums(const std::vector<Task>& tasks, const rates::Rates& rates, Counts counts) {
  std::vector<Range> hours, cost;
  for (const Task& task : tasks) {
    if (!std::invoke(counts, task)) continue;
    hours.push_back(task.hours);
    cost.push_back(task.cost);
  }
  return {total(hours, rates.correlation), total(cost, rates.correlation)};
}

void set_sums(Plan& made) {
  const Sums all = sums(made.tasks, made.rates, [](const Task&) { return true; });
  made.hours = all.hours;
  made.cost = all.cost;
  made.sure = sums(made.tasks, made.rates, [](const Task& task) { return !task.judged; });
  made.if_opening_shows = sums(made.tasks, made.rates, &Task::judged);
}

// By the least that is known of any part that is cut; else treated.
std::optional<Contingency> contingency(const Plan& plan, const weighing::Result& result) {
  if (plan.tasks.empty()) return std::nullopt;
  const rates::Rates& rates = plan.rates;
  const auto hidden = [&](Hidden by) {
    return std::ranges::find(plan.tasks, by, &Task::hidden_by) != plan.tasks.end();
  };
  Contingency made{"contingency-scoped", "on a lift, clean, scoped", rates.contingency_scoped, {}};
  const bool enough = result.main.area_share + 1e-9 >= result.constants.coverage_limit;
  const bool all_seen = result.main.area_share + 1e-9 >= 1;
  if (hidden(Hidden::repair))
    made = {"contingency-repaired", "repaired poorly before", rates.contingency_repaired, {}};
  else if (hidden(Hidden::coated) || !enough)
    made = {"contingency-coated", "coated, or part of it not seen", rates.contingency_coated, {}};
  else if (all_seen && !hidden(Hidden::scope))
    made = {"contingency-bare",
            "all of the main structure seen, what is worked on bare",
            rates.contingency_bare,
            {}};
  made.cost = made.share * plan.cost.mean;
  return made;
}

bool is_used(const rates::Rate& rate, const Plan& plan) {
  const auto any = [&](auto holds) { return std::ranges::any_of(plan.tasks, holds); };
  const auto of_kind = [&](Kind kind) {
    return any([&](const Task& task) { return task.kind == kind; });
  };
  const auto of_job = [&](const auto& each) { return rates::key(each.job) == rate.key; };
  const auto seen = [&](Hidden by) {
    return any([&](const Task& task) { return task.hidden_by == by; });
  };
  if (rate.key == "treat") return any([](const Task& task) { return !task.treated.empty(); });
  const auto any_cut = [&](auto holds) {
    return any([&](const Task& task) { return std::ranges::any_of(task.cuts, holds); });
  };
  if (rate.key == "pinhole") return any_cut([](const Cut& cut) { return cut.way == Way::weld_up; });
  if (rate.key == "lip-share")
    return any([](const Task& task) {
      return task.kind == Kind::cut && task.job == rates::Job::outer_arch;
    });
  if (rate.key == "drains") return of_kind(Kind::drains);
  if (rate.key == "brace") return of_kind(Kind::brace);
  if (rate.key == "protect") return of_kind(Kind::protect);
  if (rate.key == "hidden-bare") return seen(Hidden::bare);
  if (rate.key == "hidden-scope") return seen(Hidden::scope);
  if (rate.key == "hidden-coated") return seen(Hidden::coated);
  if (rate.key == "hidden-repair") return seen(Hidden::repair);
  if (rate.key.starts_with("contingency-"))
    return plan.contingency && plan.contingency->rate == rate.key;
  for (std::size_t job = 0; job < rates::jobs; ++job)
    if (rate.key == rates::key(static_cast<rates::Job>(job)))
      return any([&](const Task& task) { return is_welded(task) && of_job(task); }) ||
             std::ranges::any_of(plan.doubts, of_job);
  return true;
}

std::vector<Sheet> sheets_of(const std::vector<Task>& tasks) {
  std::vector<Sheet> all;
  for (const Task& task : tasks) {
    if (!task.sheet) continue;
    const auto same = std::ranges::find(all, task.sheet->thickness_mm, &Sheet::thickness_mm);
    if (same == all.end()) {
      all.push_back(*task.sheet);
      continue;
    }
    same->original_mm = std::max(same->original_mm, task.sheet->original_mm);
    same->area_m2 = same->area_m2 + task.sheet->area_m2;
    same->mass_kg = same->mass_kg + task.sheet->mass_kg;
  }
  std::ranges::sort(all, {}, &Sheet::thickness_mm);
  return all;
}

}  // namespace

std::string_view word(Kind kind) {
  switch (kind) {
    case Kind::brace:
      return "brace";
    case Kind::access:
      return "access";
    case Kind::cut:
      return "cut";
    case Kind::treat:
      return "treat";
    case Kind::drains:
      return "drains";
    case Kind::protect:
      break;
  }
  return "protect";
}

std::string_view word(Way way) {
  switch (way) {
    case Way::let_in:
      return "let-in";
    case Way::weld_up:
      return "weld-up";
    case Way::crack:
      return "crack";
    case Way::reopened:
      break;
  }
  return "reopened";
}

std::string_view word(Urgency urgency) {
  switch (urgency) {
    case Urgency::danger:
      return "danger";
    case Urgency::stiffness:
      return "stiffness";
    case Urgency::water:
      return "water";
    case Urgency::spread:
      return "spread";
    case Urgency::looks:
      break;
  }
  return "looks";
}

Plan plan(const weighing::Result& result, const rates::Rates& rates) {
  const std::vector<ZoneFacts> facts = weighing::zone_facts(result.survey);
  Plan made;
  made.rates = rates;
  made.rates_changed = rates::changed(rates);
  for (std::size_t i = 0; i < facts.size(); ++i)
    for (Task& task : tasks(result.zones[i], facts[i], rates))
      made.tasks.push_back(std::move(task));
  for (Task& task : access_tasks(made.tasks, facts, rates)) made.tasks.push_back(std::move(task));
  add_for_the_whole(made.tasks, rates);
  made.order_notes = put_in_order(made.tasks, facts);
  set_sums(made);
  made.contingency = contingency(made, result);
  made.sheets = sheets_of(made.tasks);
  made.doubts = doubts(result, facts, made);
  for (const Doubt& doubt : made.doubts) made.doubts_cost = made.doubts_cost + doubt.cost;
  for (const rates::Rate& rate : rates::table())
    if (is_used(rate, made)) made.rates_used.push_back(&rate);
  made.cautions = cautions(made.tasks, result, facts);
  made.not_counted = {"stripping and refitting of trim, tank, axles and engine", "paint and lead",
                      "parts and panels bought in", "mechanical work", "taxes"};
  return made;
}

}  // namespace tinworm::work
