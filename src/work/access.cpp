#include "work/access.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "weighing/nearness.hpp"
#include "work/job.hpp"
#include "work/reckon.hpp"
#include "work/task.hpp"

namespace tinworm::work {
namespace {

using geometry::Interval;
using weighing::ZoneFacts;

const ZoneFacts* facts_of(const Task& task, const std::vector<ZoneFacts>& facts) {
  const auto found = std::ranges::find_if(facts, [&](const ZoneFacts& zone) {
    return !task.name.empty() && zone.number == task.zone && zone.own == task.own;
  });
  return found == facts.end() ? nullptr : &*found;
}

const ZoneFacts* outer_of(const ZoneFacts& inner, const std::vector<ZoneFacts>& facts) {
  if (kind_of_part(inner) != body::Job::sill_membrane) return nullptr;
  const auto found = std::ranges::find_if(facts, [&](const ZoneFacts& zone) {
    return kind_of_part(zone) == body::Job::outer_sill && zone.side == inner.side &&
           are_joined(zone, inner) && zone.fitted();
  });
  return found == facts.end() ? nullptr : &*found;
}

// What of the outer goes anyway.
std::vector<Cut> cuts_in(const ZoneFacts& outer, bool judged_too, const std::vector<Task>& tasks) {
  std::vector<Cut> all;
  for (const Task& task : tasks)
    if (task.kind == Kind::cut && task.zone == outer.number && (judged_too || !task.judged))
      for (const Cut& cut : task.cuts)
        if (cut.way == Way::let_in) all.push_back(cut);
  return all;
}

bool goes_anyway(const Cut& inner, const std::vector<Cut>& outer, const rates::Rates& rates) {
  return std::ranges::any_of(outer, [&](const Cut& cut) {
    if (cut.whole) return true;
    if (!cut.along_at || !inner.along_at) return false;
    const double short_mm = std::max(0.0, cut.along_at->low - inner.along_at->low) +
                            std::max(0.0, inner.along_at->high - cut.along_at->high);
    const double apart_mm = std::max(inner.along_at->low - cut.along_at->high,
                                     cut.along_at->low - inner.along_at->high);
    return apart_mm < 0 && short_mm <= rates.margin_mm.likely;
  });
}

Range wider(const Range& inner, const Range& margin, double most) {
  const Range wide = inner + margin * 2;
  return {std::min(wide.low, most), std::min(wide.likely, most), std::min(wide.high, most)};
}

Cut opening(const Cut& inner, const ZoneFacts& outer, const rates::Rates& rates) {
  Cut cut;
  cut.way = Way::reopened;
  cut.places = inner.places;
  cut.placed = inner.placed;
  cut.size_assumed = inner.size_assumed;
  cut.certain = inner.certain;
  const Interval along = weighing::extent(outer.plan->extent, outer.plan->runs);
  const Interval across = weighing::extent(outer.plan->extent, weighing::across_axis(*outer.plan));
  cut.along_mm = wider(inner.along_mm, rates.margin_mm, along.length());
  cut.across_mm = wider(inner.across_mm, rates.margin_mm, across.length());
  if (inner.along_at)
    cut.along_at = Interval{std::max(along.low, inner.along_at->low - rates.margin_mm.likely),
                            std::min(along.high, inner.along_at->high + rates.margin_mm.likely)};
  return cut;
}

std::string part_text(const Task& inner) {
  const std::string side =
      inner.side == body::Side::centre ? "" : fmt::format(", {}", body::word(inner.side));
  return fmt::format("{} {}{}", inner.zone, inner.name, side);
}

Task access_task(const Task& inner, std::vector<Cut> cuts, const ZoneFacts& outer,
                 const rates::Rates& rates) {
  Task task = task_of(outer, Kind::access);
  task.reaches = inner.zone;
  task.judged = inner.judged;
  task.urgency = inner.urgency;
  task.hidden_by = inner.hidden_by;
  task.hidden = inner.hidden;
  task.hidden_why = inner.hidden_why;
  task.cuts = std::move(cuts);
  task.what = fmt::format(
      "cut it open to reach {}; when that is mended and its faces are coated, weld the same piece "
      "in again",
      part_text(inner));
  reckon_cuts(task, {}, outer, rates);
  task.hours.high *= task.hidden;
  task.cost = cost(task.hours, {}, rates);
  return task;
}

}  // namespace

std::vector<Task> access_tasks(const std::vector<Task>& tasks, const std::vector<ZoneFacts>& facts,
                               const rates::Rates& rates) {
  std::vector<Task> all;
  for (const Task& inner : tasks) {
    if (inner.kind != Kind::cut) continue;
    const ZoneFacts* zone = facts_of(inner, facts);
    const ZoneFacts* outer = zone ? outer_of(*zone, facts) : nullptr;
    if (outer == nullptr) continue;
    const std::vector<Cut> going = cuts_in(*outer, inner.judged, tasks);
    std::vector<Cut> needed;
    for (const Cut& cut : inner.cuts)
      if (!goes_anyway(cut, going, rates)) needed.push_back(opening(cut, *outer, rates));
    if (!needed.empty()) all.push_back(access_task(inner, std::move(needed), *outer, rates));
  }
  return all;
}

}  // namespace tinworm::work
