#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

constexpr double slight_mm = 25;  // of a dent or a wave, common practice

bool is_marked(const Find& find) {
  const auto& marks = find.look->facts.entry->marks;
  return std::ranges::find(marks, find.recorded->name, &survey::Mark::where) != marks.end();
}

// A reading is compared with the next only if both are of the same point.
void ask_for_marks(Asking& asking) {
  Finds unmarked;
  for (const Find& find : asking.finds)
    if (find.look->facts.role == body::Role::main && !find.recorded->metal_mm.empty() &&
        !is_marked(find))
      unmarked.push_back(&find);
  if (unmarked.empty()) return;
  asking.of_car("place-not-marked",
                fmt::format("how is the next surveyor to find the point that was measured again: "
                            "{}? Say under `mark` what it lies from.",
                            list(unmarked)),
                "A few millimetres aside sheet rusts otherwise: then worse or better between two "
                "visits rests on luck.");
}

void ask_for_options(Asking& asking) {
  std::vector<std::string> untold;
  for (const body::Option& option : asking.result.body->options)
    if (!asking.result.survey.fitted.contains(option.name))
      untold.push_back(fmt::format("{} ({})", option.name, fmt::join(option.choices, " or ")));
  if (untold.empty()) return;
  asking.of_car("option-not-told",
                fmt::format("what has this car: {}? Say it under `fitted`.", list(untold)),
                "Until it is told, the mountings of every choice count.");
}

bool is_of_sill(const body::Plan& plan, int zone) {
  return std::ranges::any_of(plan.sills, [&](const auto& side) {
    return std::ranges::find(side.second, zone) != side.second.end();
  });
}

bool is_slight(const survey::Spot& spot) {
  return spot.size && std::max(spot.size->along_mm, spot.size->across_mm) <= slight_mm;
}

bool is_bent(const survey::Spot& spot) {
  return std::ranges::any_of(spot.shapes,
                             [](survey::Shape shape) { return shape != survey::Shape::filler; });
}

void ask_about_bent_sills(Asking& asking) {
  for (const Find& find : asking.finds) {
    const survey::Spot& spot = *find.recorded;
    if (!is_of_sill(*asking.result.body, find.look->facts.number) || !is_bent(spot) ||
        is_slight(spot))
      continue;
    asking.of_spot(
        find, "sill-bent",
        fmt::format("{}: what pushed the sill out of shape, and what lies behind it?", title(find)),
        "A sill out of shape was struck, jacked in the wrong place, or is a cover over "
        "another; one that is bent carries less.");
  }
}

void ask_about_acid(Asking& asking) {
  const auto battery = asking.result.survey.fitted.find("battery");
  if (battery == asking.result.survey.fitted.end()) return;
  for (const Find& find : asking.finds) {
    const body::Side side = find.look->facts.side;
    if (find.recorded->rust != survey::Rust::acid || side == body::Side::centre ||
        body::word(side) == battery->second)
      continue;
    asking.of_spot(find, "acid-elsewhere",
                   fmt::format("{}: acid, yet the battery stands {}; is the side right?",
                               title(find), battery->second),
                   "One of the two is on the wrong side.");
  }
}

}  // namespace

void ask_about_records(Asking& asking) {
  ask_for_marks(asking);
  ask_for_options(asking);
  ask_about_bent_sills(asking);
  ask_about_acid(asking);
}

}  // namespace tinworm::weighing
