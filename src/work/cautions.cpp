#include "work/cautions.hpp"

#include <algorithm>

#include "geometry/space.hpp"
#include "work/job.hpp"

namespace tinworm::work {
namespace {

using rates::Job;
using weighing::ZoneFacts;

struct Subject {  // a task and the part it is on
  const Task& task;
  const ZoneFacts* zone;  // null: the whole car
  const weighing::Result& result;
};

bool is_welded(const Subject& on) {
  return on.task.kind == Kind::cut || on.task.kind == Kind::access;
}

bool takes_paint_off(const Subject& on) {
  return is_welded(on) || on.task.kind == Kind::treat;
}

// Cut within so far of a mounting that carries that.
bool is_cut_near(const Subject& on, body::Carries carries, double within_mm) {
  if (!is_welded(on) || !on.zone || !on.zone->plan) return false;
  return std::ranges::any_of(on.result.body->mounts, [&](const body::Mount& mount) {
    return mount.carries == carries &&
           geometry::distance_mm(mount.at, on.zone->plan->extent) <= within_mm;
  });
}

bool is_by_the_tank(const Subject& on) {
  constexpr double spread_of_heat_mm = 500;  // this method's own
  return is_cut_near(on, body::Carries::tank, spread_of_heat_mm);
}

bool holds_a_spring(const Subject& on) {
  return is_cut_near(on, body::Carries::suspension, on.result.constants.near_radius_mm);
}

bool holds_a_belt(const Subject& on) {
  return is_cut_near(on, body::Carries::belts, on.result.constants.near_radius_mm);
}

bool weakens(const Subject& on) {
  return on.task.kind == Kind::brace ||
         (is_welded(on) && on.zone && on.zone->role == body::Role::main);
}

bool lies_outside(const Subject& on) {
  return takes_paint_off(on) && on.zone && is_outside(*on.zone);
}

bool is_by_glass(const Subject& on) {
  return is_welded(on) && on.zone &&
         (lets_water_in(*on.zone) || on.task.job == Job::door_bottom ||
          on.task.job == Job::post_foot);
}

bool is_coated_below(const Subject& on) {
  return takes_paint_off(on) && on.zone && on.zone->plan &&
         on.zone->seen.word != survey::SeenWord::bare &&
         std::ranges::any_of(on.zone->plan->drawn, [](const body::Drawing& drawing) {
           return drawing.view == body::View::underneath || drawing.view == body::View::frame;
         });
}

bool has_resin(const Subject& on) {
  if (!takes_paint_off(on) || !on.zone || !on.zone->entry) return false;
  return std::ranges::any_of(on.zone->entry->repairs, [](const survey::Repair& repair) {
    return repair.kind == survey::RepairKind::filled || repair.kind == survey::RepairKind::bonded;
  });
}

bool is_stuffed(const Subject& on) {
  return is_welded(on) && on.zone && on.zone->entry &&
         std::ranges::any_of(on.zone->entry->found,
                             [](const survey::Spot& spot) { return spot.stuffed.has_value(); });
}

bool may_have_airbags(const Subject& on) {
  constexpr int first_year = 1980;  // common practice: some from the early 1980s
  const auto& built = on.result.survey.car.built;
  return is_welded(on) && built && *built >= first_year;
}

struct Rule {
  bool (*holds)(const Subject&);
  const char* text;
};

// Published: fuel (UK HSE on garage fires), 2-pack paint (UK HSE on isocyanates), battery (welding
// handbook); figures as those have them. The rest is common practice; fibre in underseal: memory.
constexpr Rule rules[] = {
    {weakens,
     "stand the car on rated stands, on points that were tapped and found sound and near where "
     "its weight will be in use, never on the part that is cut; a second support; nobody inside. "
     "A rotten car shifts when it is cut."},
    {holds_a_spring,
     "a spring, damper or suspension arm is held here or near: carry the wheel or axle, and unload "
     "or take out the spring, before metal that holds it is cut."},
    {holds_a_belt,
     "a seat belt is anchored here or near: metal no thinner than it was, the anchorage's plate "
     "renewed with it, and the belt checked; local law may want it inspected."},
    {is_welded,
     "before any weld, drain and move fuel and brake lines, wiring, trim, felt, foam and wax out "
     "of the heat, inside boxes too; extinguisher at hand, and watch for fire for 30 to 60 "
     "minutes after the last arc."},
    {is_by_the_tank,
     "these lie by the fuel tank: take it out and away first, with a fuel retriever. Never weld "
     "on or beside a tank that wasn't cleaned, diesel too."},
    {is_stuffed, "the box is stuffed: foam, paper and board burn inside it. Empty it first."},
    {is_welded,
     "both battery leads off; clamp the earth close to the weld. No chlorinated cleaner before "
     "an arc: it makes phosgene. Zinc, paint and tar fume: draw it off and wear a mask; cover "
     "eyes and skin."},
    {is_by_glass, "cover or take out the glass: sparks pit it, and old screens may be toughened."},
    {may_have_airbags,
     "airbags and belt tensioners, if fitted: by the maker's procedure only; no heat near them."},
    {takes_paint_off,
     "old paint may hold lead, and factory seams do where they were loaded: scrape or file, no "
     "dry grinding or sanding, no overheating; wash before eating."},
    {is_coated_below,
     "some old underseals and sound pads may hold asbestos: wet them, no dry brushing or "
     "grinding, until it is known."},
    {has_resin, "filler and glass-fibre dust: mask, extraction."},
    {lies_outside,
     "two-pack paint gives off isocyanates, a main cause of asthma at work: only in a booth with "
     "an air-fed mask."},
};

}  // namespace

std::vector<Caution> cautions(const std::vector<Task>& tasks, const weighing::Result& result,
                              const std::vector<ZoneFacts>& facts) {
  std::vector<Caution> all;
  for (const Rule& rule : rules) {
    Caution caution{rule.text, {}};
    for (const Task& task : tasks) {
      const auto zone = std::ranges::find_if(facts, [&](const ZoneFacts& each) {
        return !task.name.empty() && each.number == task.zone && each.own == task.own;
      });
      if (rule.holds({task, zone == facts.end() ? nullptr : &*zone, result}))
        caution.tasks.push_back(task.number);
    }
    if (!caution.tasks.empty()) all.push_back(std::move(caution));
  }
  return all;
}

}  // namespace tinworm::work
