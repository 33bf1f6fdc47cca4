#include <fmt/format.h>

#include <algorithm>

#include "metal/repeatability.hpp"
#include "survey/signs.hpp"
#include "weighing/asking.hpp"
#include "weighing/gauging.hpp"

namespace tinworm::weighing {
namespace {

using survey::Hand;
using survey::Tap;

constexpr double decimal_slack = 1e-9;

bool measured(const Find& find) {
  return find.weighed->metal.kind == SpanKind::interval;
}

// Whether some reading is over one sheet, the coat taken off, though the mean of its set isn't.
// Where nothing mends the coat, paint is what the gauge read.
bool has_high_reading(const Asking& asking, const Find& find) {
  const MetalLeft& metal = find.weighed->metal;
  const std::vector<double>& readings_mm = find.recorded->metal_mm;
  if (readings_mm.empty() || !metal.baseline_mm || !metal.mean_mm) return false;
  if (coating(asking.result.survey, find.look->facts.entry, find.recorded->coating, asking.rules)
          .upper_bound)
    return false;
  const double coat_mm = metal::mean(readings_mm) - *metal.mean_mm;
  const double limit_mm = asking.rules.too_thick * *metal.baseline_mm;
  return metal::greatest(readings_mm) - coat_mm > limit_mm + decimal_slack;
}

void ask_about_thick(Asking& asking) {
  for (const Find& find : asking.finds) {
    if (!find.weighed->too_thick && !has_high_reading(asking, find)) continue;
    asking.of_spot(
        find, "thick-reading",
        fmt::format("{}: what was measured with {:.2f} mm, where the sheet is {:.2f} mm? "
                    "Look for a plate, a second skin, scale or paint.",
                    title(find), metal::greatest(find.recorded->metal_mm),
                    *find.weighed->metal.baseline_mm),
        fmt::format("Over {:.2f} times the sheet it isn't one sheet: the reading isn't "
                    "used, and the metal beneath isn't known.",
                    asking.rules.too_thick));
  }
}

// A pit as deep as the metal it stands in, where no hole is recorded.
void ask_about_pits(Asking& asking) {
  for (const Find& find : asking.finds) {
    const MetalLeft& metal = find.weighed->metal;
    if (!metal.baseline_mm || find.recorded->hole) continue;
    if (find.recorded->rust == survey::Rust::hole) continue;
    std::vector<double> depths_mm = find.recorded->pit_mm;
    if (find.recorded->pits)
      depths_mm.insert(depths_mm.end(), find.recorded->pits->deepest_mm.begin(),
                       find.recorded->pits->deepest_mm.end());
    if (depths_mm.empty()) continue;
    const double deepest_mm = metal::greatest(depths_mm);
    const double metal_mm = measured(find) ? *metal.mean_mm : *metal.baseline_mm;
    if (deepest_mm + decimal_slack < metal_mm) continue;
    asking.of_spot(find, "pit-through",
                   fmt::format("{}: is the pit of {:.2f} mm right, in metal of {:.2f} mm? If it "
                               "goes through, record the hole with its size.",
                               title(find), deepest_mm, metal_mm),
                   "A pit through the metal counts as weak, a hole as no metal at all.");
  }
}

// Pits read over too little of a place, or over a place too large, for its deepest to be told.
void ask_about_patches(Asking& asking) {
  for (const Find& find : asking.finds) {
    const auto& over_place = find.weighed->metal.pits_over_place;
    const bool small = over_place == metal::Extrapolation::small_share;
    if (!small && over_place != metal::Extrapolation::large_area) continue;
    asking.of_spot(
        find, "pits-over-place",
        fmt::format("{}: can more of it be searched for pits, patch by patch? {}.", title(find),
                    small ? "Under 3 % of it was read" : "It is larger than 500 patches"),
        "Only the deepest pit seen counts until then: a deeper one may stand where nobody looked.");
  }
}

void ask_about_hands(Asking& asking) {
  const rules::Rules& rules = asking.rules;
  for (const Find& find : asking.finds) {
    if (!measured(find)) continue;
    const double left = find.weighed->metal.shown.value;
    if (find.recorded->hand == Hand::firm && left + decimal_slack < rules.weak_limit) {
      asking.of_spot(find, "hand-against-gauge",
                     fmt::format("{}: can it be pressed and measured again? It is firm under the "
                                 "thumb, yet {} of its sheet was measured.",
                                 title(find), percent(left)),
                     "Metal under half of its sheet is weak; one of the two was taken beside it.");
    } else if (gives_way(*find.recorded) && left + decimal_slack >= rules.repair_limit) {
      asking.of_spot(find, "hand-against-gauge",
                     fmt::format("{}: was the gauge held where the metal gives way? It measured "
                                 "{} of the sheet.",
                                 title(find), percent(left)),
                     "One place can't do both; the hand counts, and the reading speaks for metal "
                     "beside it.");
    } else if (find.recorded->tap == Tap::dull && left + decimal_slack >= rules.repair_limit) {
      asking.of_spot(find, "dull-yet-measures",
                     fmt::format("{}: why does it sound dull, yet measure well? Look for filler, a "
                                 "second skin or wax.",
                                 title(find)),
                     "A gauge reads one sheet under its probe; a dull note speaks of rust or "
                     "filler round it.");
    }
  }
}

void ask_about_set(Asking& asking, const Look& look, const survey::Spot* spot,
                   const std::vector<double>& readings_mm) {
  const metal::Prior prior = {asking.rules.prior_scatter_mm, asking.rules.prior_degrees,
                              asking.rules.scatter_limit_mm};
  if (!metal::too_wide(readings_mm, prior)) return;
  const std::string question =
      fmt::format("{}, {}: is it one sheet, and was it clean? Its readings differ by {:.2f} mm.",
                  title(look), spot ? spot->name : "reference", metal::spread(readings_mm));
  const std::string why =
      "They are no repeats of one figure, and leave the metal there known only roughly.";
  if (!spot) return asking.of_zone(look, "wide-readings", question, why);
  asking.of_spot({&look, spot, nullptr}, "wide-readings", question, why);
}

void ask_about_scatter(Asking& asking) {
  for (const Look& look : asking.looks) {
    if (!look.facts.entry) continue;
    ask_about_set(asking, look, nullptr, look.facts.entry->reference_mm);
    for (const survey::Spot& spot : look.facts.entry->found)
      ask_about_set(asking, look, &spot, spot.metal_mm);
  }
}

bool all_are(const std::vector<double>& readings_mm, double mm) {
  return std::ranges::all_of(readings_mm, [mm](double r) { return std::abs(r - mm) < 1e-9; });
}

// Whether every reading of the car is the figure the body plan has for its zone.
bool copied_from_plan(const Asking& asking) {
  std::size_t readings = 0;
  for (const Find& find : asking.finds) {
    if (find.recorded->metal_mm.empty()) continue;
    if (!find.look->facts.plan) return false;
    if (!all_are(find.recorded->metal_mm, find.look->facts.plan->sheet_mm)) return false;
    readings += find.recorded->metal_mm.size();
  }
  return readings > 0 && static_cast<double>(readings) >= asking.rules.ask_repeats;
}

void ask_about_repeats(Asking& asking) {
  if (copied_from_plan(asking)) {
    asking.of_car("plan-sheet-read",
                  "were the readings measured, or copied? Each is the body plan's sheet to the "
                  "last figure.",
                  "The plan tells what such a body usually has; only a gauge tells what this car "
                  "has left.");
    return;
  }
  std::vector<std::string> entries;
  const Find* first = nullptr;
  for (const Find& find : asking.finds) {
    const std::vector<double>& readings_mm = find.recorded->metal_mm;
    const bool many = static_cast<double>(readings_mm.size()) >= asking.rules.ask_repeats;
    if (readings_mm.empty() || !many || !all_are(readings_mm, readings_mm.front())) continue;
    if (!first) first = &find;
    entries.push_back(fmt::format("{}, {} times {:.2f} mm", title(find), readings_mm.size(),
                                  readings_mm.front()));
  }
  if (!first) return;
  asking.of_spot(*first, "same-reading",
                 fmt::format("was the gauge lifted between readings, and does it show hundredths? "
                             "The same figure stands for {}.",
                             list(entries)),
                 "Readings that never differ hide their scatter, and make a result look surer than "
                 "it is.");
}

}  // namespace

void ask_about_readings(Asking& asking) {
  ask_about_thick(asking);
  ask_about_pits(asking);
  ask_about_patches(asking);
  ask_about_hands(asking);
  ask_about_scatter(asking);
  ask_about_repeats(asking);
}

}  // namespace tinworm::weighing
