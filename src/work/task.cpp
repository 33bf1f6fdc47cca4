#include "work/task.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "survey/words.hpp"
#include "weighing/verdict.hpp"
#include "weighing/words.hpp"
#include "work/cuts.hpp"
#include "work/job.hpp"
#include "work/reckon.hpp"

namespace tinworm::work {
namespace {

using weighing::Spot;
using weighing::Step;
using weighing::ZoneFacts;

bool is_near(const Spot& spot) {
  return spot.bearing.near != weighing::Near::no;
}

const survey::Repair& repair_of(const Spot& spot, const ZoneFacts& facts) {
  return facts.entry->repairs[static_cast<std::size_t>(spot.index)];
}

bool is_bad_repair(const Spot& spot, const weighing::Zone& zone) {
  return spot.is_repair && spot.found && zone.role != body::Role::skin &&
         zone.repairs[static_cast<std::size_t>(spot.index)].reliable == false;
}

bool is_cut(const Spot& spot, const weighing::Zone& zone) {
  if (spot.is_repair) return is_bad_repair(spot, zone);
  if (!spot.found) return false;
  return spot.step >= (zone.role == body::Role::skin ? Step::holed : Step::thin);
}

// "rear end (3 holes, the largest 20 x 15 mm)"
std::string named_with_signs(const Spot& spot) {
  const std::string signs = weighing::signs_text(spot);
  return signs.empty() ? spot.name : fmt::format("{} ({})", spot.name, signs);
}

Place place_of(const Spot& spot, const ZoneFacts& facts) {
  Place place;
  place.name = spot.is_repair ? fmt::format("repair {} ({})", spot.index + 1,
                                            word(repair_of(spot, facts).kind))
                              : named_with_signs(spot);
  place.at = spot.at;
  if (!spot.size_assumed) place.size = spot.size;
  place.certain = spot.is_repair || spot.by_measure_or_hand || spot.step_high >= Step::thin;
  place.holed = spot.step == Step::holed;
  return place;
}

double factor(Hidden hidden, const rates::Rates& rates) {
  switch (hidden) {
    case Hidden::bare:
      return rates.hidden_bare;
    case Hidden::scope:
      return rates.hidden_scope;
    case Hidden::coated:
      return rates.hidden_coated;
    case Hidden::repair:
      return rates.hidden_repair;
    case Hidden::nothing:
      break;
  }
  return 1;
}

// What is hidden beside what was seen, by the worst that holds.
void set_hidden(Task& task, const ZoneFacts& facts, bool bad_repair, const rates::Rates& rates) {
  using survey::SeenWord;
  const auto set = [&](Hidden by, const char* why) {
    task.hidden_by = by;
    task.hidden = factor(by, rates);
    task.hidden_why = why;
  };
  const auto& seen = facts.seen.word;
  if (bad_repair)
    set(Hidden::repair, "a repair that can't be relied on");
  else if (seen == SeenWord::bare && facts.inside_seen())
    set(Hidden::bare, "seen bare");
  else if (seen == SeenWord::bare)
    set(Hidden::coated, "inside not seen");
  else if (seen == SeenWord::scope)
    set(Hidden::scope, "seen by scope");
  else
    set(Hidden::coated, seen == SeenWord::coated ? "coated"
                        : seen == SeenWord::part ? "seen in part"
                        : seen == SeenWord::tap  ? "tapped only"
                                                 : "not seen");
}

std::string cut_words(const std::vector<Cut>& cuts, const ZoneFacts& facts) {
  std::vector<std::string> sure, judged;
  for (const Cut& cut : cuts) {
    auto& places = cut.certain ? sure : judged;
    places.insert(places.end(), cut.places.begin(), cut.places.end());
  }
  std::vector<std::string> words;
  if (!cuts.empty() && cuts.front().whole)
    words.push_back(fmt::format("renew it from end to end, holed as it is near an end: {}",
                                fmt::join(sure, ", ")));
  else if (!sure.empty())
    words.push_back(
        fmt::format("{}: {}",
                    facts.plan ? "cut out to sound metal, let in new sheet, seam-welded all round"
                               : "undo, cut back to sound metal and make good with a seam weld",
                    fmt::join(sure, ", ")));
  if (!judged.empty())
    words.push_back(fmt::format(
        "clean and measure, only judged so far: {}; where past the limit, cut it out and let in "
        "new sheet",
        fmt::join(judged, ", ")));
  if (facts.plan && facts.plan->joined == body::Joined::bolted)
    words.emplace_back("it is bolted on, so a sound one in its place may be the better way");
  return fmt::format("{}", fmt::join(words, "; "));
}

Urgency urgency_of_cut(const Task& task, const std::vector<const Spot*>& spots, body::Role role) {
  if (role != body::Role::skin && std::ranges::any_of(spots, [](auto* s) { return is_near(*s); }))
    return Urgency::danger;
  if (role == body::Role::main) return Urgency::stiffness;
  return lets_water_in(task.job, task.name) ? Urgency::water : Urgency::spread;
}

Task cut_task(const weighing::Zone& zone, const ZoneFacts& facts,
              const std::vector<const Spot*>& spots, const rates::Rates& rates) {
  Task task = task_of(facts, Kind::cut);
  std::vector<Place> places;
  bool bad_repair = false;
  for (const Spot* spot : spots) {
    places.push_back(place_of(*spot, facts));
    bad_repair = bad_repair || is_bad_repair(*spot, zone);
  }
  task.cuts = cuts(places, facts, rates);
  task.urgency = urgency_of_cut(task, spots, zone.role);
  set_hidden(task, facts, bad_repair, rates);
  reckon_cuts(task, zone, facts, rates);
  task.what = cut_words(task.cuts, facts);
  return task;
}

void add_treatment(Task& task, const std::vector<std::string>& places, const rates::Rates& rates) {
  if (places.empty()) return;
  task.treated = places;
  task.hours = task.hours + rates.treat * static_cast<double>(places.size());
  const std::string text = fmt::format("clean, treat, coat and wax: {}", fmt::join(places, ", "));
  task.what += task.what.empty() ? text : "; " + text;
}

void finish(Task& task, const rates::Rates& rates) {
  task.hours.high *= task.hidden;
  task.cost = cost(task.hours, task.sheet ? task.sheet->mass_kg : Range{}, rates);
}

Task treat_task(const weighing::Zone& zone, const ZoneFacts& facts, const rates::Rates& rates) {
  Task task = task_of(facts, Kind::treat);
  set_hidden(task, facts, false, rates);
  task.urgency = lets_water_in(task.job, task.name) ? Urgency::water
                 : zone.role == body::Role::skin    ? Urgency::looks
                                                    : Urgency::spread;
  return task;
}

std::optional<Task> drains_task(const ZoneFacts& facts, const rates::Rates& rates) {
  using survey::Drains;
  if (!facts.entry || !facts.entry->drains || *facts.entry->drains == Drains::open)
    return std::nullopt;
  Task task = task_of(facts, Kind::drains);
  task.urgency = Urgency::water;
  task.what = *facts.entry->drains == Drains::blocked
                  ? "clear the blocked drains; pour water in and see it run out"
                  : "open the drains that are plugged; pour water in and see it run out";
  task.hours = rates.drains;
  finish(task, rates);
  return task;
}

}  // namespace

Task task_of(const ZoneFacts& zone, Kind kind) {
  Task task;
  task.zone = zone.number;
  task.own = zone.own;
  task.name = zone.name;
  task.side = zone.side;
  task.kind = kind;
  task.job = job_of(zone.name);
  return task;
}

std::vector<Task> tasks(const weighing::Zone& zone, const ZoneFacts& facts,
                        const rates::Rates& rates) {
  std::vector<Task> all;
  if (!facts.fitted()) return all;
  if (auto drains = drains_task(facts, rates)) all.push_back(std::move(*drains));
  std::vector<const Spot*> to_cut;
  std::vector<std::string> to_treat;
  for (const Spot& spot : zone.spots) {
    if (is_cut(spot, zone))
      to_cut.push_back(&spot);
    else if (spot.found)
      to_treat.push_back(place_of(spot, facts).name);
  }
  if (to_cut.empty() && to_treat.empty()) return all;
  Task task =
      to_cut.empty() ? treat_task(zone, facts, rates) : cut_task(zone, facts, to_cut, rates);
  add_treatment(task, to_treat, rates);
  finish(task, rates);
  all.push_back(std::move(task));
  return all;
}

std::optional<Task> doubtful(const weighing::Zone& zone, const ZoneFacts& facts,
                             const rates::Rates& rates) {
  if (!facts.fitted() || !facts.load_bearing()) return std::nullopt;
  std::vector<const Spot*> spots;
  for (const Spot& spot : zone.spots) {
    const bool unknown_repair =
        spot.is_repair && !zone.repairs[static_cast<std::size_t>(spot.index)].reliable;
    const bool may_be_thin = !spot.is_repair && spot.found && !spot.by_measure_or_hand &&
                             spot.step < Step::thin && spot.step_low >= Step::thin;
    if (unknown_repair ? !spot.found : may_be_thin) spots.push_back(&spot);
  }
  if (spots.empty()) return std::nullopt;
  Task task = cut_task(zone, facts, spots, rates);
  finish(task, rates);
  return task;
}

}  // namespace tinworm::work
