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
#include "work/splices.hpp"
#include "work/wording.hpp"

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
  if (spot.signs.crack_mm || spot.signs.pinhole) return true;
  return spot.step >= (zone.role == body::Role::skin ? Step::holed : Step::thin);
}

// "rear end (3 holes, the largest 20 x 15 mm)"
std::string named_with_signs(const Spot& spot) {
  const std::string signs = weighing::signs_text(spot);
  return signs.empty() ? spot.name : fmt::format("{} ({})", spot.name, signs);
}

// Nothing but one pinhole, or a crack, in metal that stays.
void set_small_damage(Place& place, const Spot& spot, body::Role role) {
  const weighing::Signs& signs = spot.signs;
  const Step stays_under = role == body::Role::skin ? Step::holed : Step::thin;
  if (spot.is_repair || spot.beside_step >= stays_under) return;
  if (signs.pinhole && spot.holes.size() == 1 && !signs.crack_mm)
    place.pinhole_mm = signs.hole_mm;
  else if (signs.crack_mm && !signs.hole)
    place.crack_mm = *signs.crack_mm;
  if (place.crack_mm > 0 && !place.size) place.size = survey::Size{place.crack_mm, 0};
}

Place place_of(const Spot& spot, const ZoneFacts& facts) {
  Place place;
  place.name = spot.is_repair ? fmt::format("repair {} ({})", spot.index + 1,
                                            word(repair_of(spot, facts).kind))
                              : named_with_signs(spot);
  place.at = spot.at;
  if (!spot.size_assumed) place.size = spot.size;
  place.certain = spot.is_repair || spot.by_measure_or_hand || spot.step_high >= Step::thin;
  place.holed = spot.step == Step::holed && !spot.signs.pinhole;
  set_small_damage(place, spot, facts.role);
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

Urgency urgency_of_cut(const ZoneFacts& facts, const std::vector<const Spot*>& spots) {
  if (facts.load_bearing() && std::ranges::any_of(spots, [](auto* spot) { return is_near(*spot); }))
    return Urgency::danger;
  if (facts.role == body::Role::main) return Urgency::stiffness;
  return lets_water_in(facts) ? Urgency::water : Urgency::spread;
}

Task cut_task(const weighing::Zone& zone, const ZoneFacts& facts,
              const std::vector<const Spot*>& spots, std::vector<Cut> cuts, bool judged,
              const rates::Rates& rates) {
  Task task = task_of(facts, Kind::cut);
  std::vector<const Spot*> cut_out;
  for (const Spot* spot : spots)
    if (std::ranges::any_of(cuts, [&](const Cut& cut) {
          return std::ranges::find(cut.places, place_of(*spot, facts).name) != cut.places.end();
        }))
      cut_out.push_back(spot);
  task.cuts = std::move(cuts);
  task.judged = judged;
  task.urgency = urgency_of_cut(facts, cut_out);
  set_hidden(task, facts,
             std::ranges::any_of(cut_out, [&](auto* spot) { return is_bad_repair(*spot, zone); }),
             rates);
  reckon_cuts(task, zone, facts, rates);
  task.what = cut_words(task.cuts, facts);
  task.questions = splice_questions(task.cuts, facts);
  return task;
}

std::vector<Cut> cuts_of(const std::vector<const Spot*>& spots, const ZoneFacts& facts,
                         const rates::Rates& rates) {
  std::vector<Place> places;
  for (const Spot* spot : spots) places.push_back(place_of(*spot, facts));
  return cuts(places, facts, rates);
}

// What is sure, and apart from it what only opening or measuring can show.
std::vector<Task> cut_tasks(const weighing::Zone& zone, const ZoneFacts& facts,
                            const std::vector<const Spot*>& spots, const rates::Rates& rates) {
  std::vector<Cut> sure, judged;
  for (Cut& cut : cuts_of(spots, facts, rates))
    (cut.certain ? sure : judged).push_back(std::move(cut));
  std::vector<Task> made;
  if (!sure.empty()) made.push_back(cut_task(zone, facts, spots, std::move(sure), false, rates));
  if (!judged.empty()) made.push_back(cut_task(zone, facts, spots, std::move(judged), true, rates));
  return made;
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
  task.urgency = lets_water_in(facts)            ? Urgency::water
                 : zone.role == body::Role::skin ? Urgency::looks
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
  task.job = job_of(kind_of_part(zone));
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
  std::vector<Task> made = cut_tasks(zone, facts, to_cut, rates);
  // What is sure to be treated goes with no task that may fall away.
  if (!to_treat.empty() && (made.empty() || made.front().judged))
    made.insert(made.begin(), treat_task(zone, facts, rates));
  if (!made.empty()) add_treatment(made.front(), to_treat, rates);
  for (Task& task : made) {
    finish(task, rates);
    all.push_back(std::move(task));
  }
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
  Task task = cut_task(zone, facts, spots, cuts_of(spots, facts, rates), true, rates);
  finish(task, rates);
  return task;
}

}  // namespace tinworm::work
