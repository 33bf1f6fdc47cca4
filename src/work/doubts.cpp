#include "work/doubts.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "work/job.hpp"
#include "work/reckon.hpp"
#include "work/task.hpp"

namespace tinworm::work {
namespace {

Doubt doubt_of(const Task& task, std::string why) {
  return {task.zone,      task.own, task.name,  task.side,
          std::move(why), task.job, task.hours, task.cost};
}

bool is_planned(const Plan& plan, const weighing::ZoneFacts& zone) {
  return std::ranges::any_of(plan.tasks, [&](const Task& task) {
    return task.kind == Kind::cut && !task.name.empty() && task.zone == zone.number &&
           task.own == zone.own;
  });
}

std::string not_seen(const survey::Seen& seen) {
  if (!seen.word) return "not recorded";
  if (seen.word == survey::SeenWord::tap) return "tapped only";
  return seen.reason.empty() ? "hidden" : fmt::format("not seen: {}", seen.reason);
}

std::string why_doubtful(const Task& task, const weighing::Zone& zone) {
  std::vector<std::string> places;
  for (const Cut& cut : task.cuts)
    places.insert(places.end(), cut.places.begin(), cut.places.end());
  const bool repair = std::ranges::any_of(
      zone.spots, [](const weighing::Spot& spot) { return spot.is_repair && !spot.found; });
  return fmt::format(
      "{}: {}", repair ? "can't be told whether it holds" : "only judged, may be past the limit",
      fmt::join(places, ", "));
}

std::string why_to_open(const weighing::Result& result, const weighing::ZoneFacts& zone) {
  for (const weighing::OpenUp& open : result.open_up)
    if (open.zone == zone.number && open.own == zone.own) return open.why;
  return "";
}

// As the job of the trade that the part belongs to.
Doubt whole_part(const weighing::ZoneFacts& zone, std::string why, const rates::Rates& rates) {
  Task task = task_of(zone, Kind::cut);
  task.hours = rates.of(task.job);
  task.cost = cost(task.hours, {}, rates);
  return doubt_of(task, std::move(why));
}

}  // namespace

std::vector<Doubt> doubts(const weighing::Result& result,
                          const std::vector<weighing::ZoneFacts>& facts, const Plan& plan) {
  std::vector<Doubt> all;
  for (std::size_t i = 0; i < facts.size(); ++i) {
    const weighing::ZoneFacts& zone = facts[i];
    if (!zone.fitted() || !zone.load_bearing()) continue;
    const std::string to_open = why_to_open(result, zone);
    if (const auto task = doubtful(result.zones[i], zone, plan.rates))
      all.push_back(doubt_of(*task, why_doubtful(*task, result.zones[i])));
    else if (is_planned(plan, zone))
      continue;
    else if (!zone.is_seen())
      all.push_back(whole_part(zone, not_seen(zone.seen), plan.rates));
    else if (!to_open.empty())
      all.push_back(whole_part(zone, to_open, plan.rates));
  }
  std::ranges::stable_sort(all, std::greater{}, [](const Doubt& each) { return each.cost.likely; });
  return all;
}

}  // namespace tinworm::work
