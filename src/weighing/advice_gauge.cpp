#include <fmt/format.h>

#include <algorithm>

#include "weighing/asking.hpp"
#include "weighing/gauging.hpp"

namespace tinworm::weighing {
namespace {

bool has_readings(const Look& look) {
  return look.facts.entry && std::ranges::any_of(look.facts.entry->found, [](const auto& spot) {
           return !spot.metal_mm.empty();
         });
}

void ask_for_baselines(Asking& asking) {
  Looks none, assumed;
  for (const Look& look : asking.looks) {
    if (!has_readings(look)) continue;
    const survey::Zone& entry = *look.facts.entry;
    if (!look.facts.plan && entry.reference_mm.empty() && !entry.sheet_mm) none.push_back(&look);
    const bool by_plan = std::ranges::any_of(look.zone->spots, [](const Spot& spot) {
      return spot.metal.kind == SpanKind::interval &&
             spot.metal.baseline_from == BaselineFrom::plan_sheet;
    });
    if (by_plan && look.facts.load_bearing()) assumed.push_back(&look);
  }
  if (!none.empty())
    asking.of_zone(
        *none.front(), "no-baseline",
        fmt::format("what was the sheet of {}? Give `reference` readings of sound metal, "
                    "or `sheet`.",
                    list(none)),
        "With nothing to hold them against, readings say nothing of loss.");
  if (!assumed.empty())
    asking.of_zone(*assumed.front(), "assumed-sheet",
                   fmt::format("can sound metal be measured as a `reference` for {}? The readings "
                               "stand against the body plan's sheet.",
                               list(assumed)),
                   fmt::format("That sheet is known within {} only, and may be another than this "
                               "car's.",
                               percent(asking.rules.plan_sheet_half_share)));
}

void ask_for_film(Asking& asking) {
  Looks bounded;
  for (const Look& look : asking.looks)
    if (has_readings(look) &&
        has_upper_bound(asking.result.survey, *look.facts.entry, asking.rules))
      bounded.push_back(&look);
  if (bounded.empty()) return;
  asking.of_zone(*bounded.front(), "film-not-read",
                 fmt::format("can the coat be measured or taken off on {}? The gauge read through "
                             "it, and no film that could be paint is recorded.",
                             list(bounded)),
                 "As they stand the readings only say that the sheet is no thicker.");
}

void ask_about_instrument(Asking& asking) {
  if (std::ranges::none_of(asking.looks, has_readings)) return;
  const survey::MetalGauge& gauge = asking.result.survey.gauge;
  if (!gauge.uncertainty_mm)
    asking.of_car("gauge-not-said",
                  "how sure is the gauge? Give its standard uncertainty under `gauges: metal: "
                  "uncertainty`.",
                  fmt::format("Until then {:.2f} mm is assumed, and goes into every interval.",
                              asking.rules.gauge_uncertainty_mm));
  if (gauge.coating_assumed)
    asking.of_car("gauge-not-said",
                  "was the coat taken off under the gauge? Say so under `gauges: metal: coating`.",
                  "Until then bare metal is assumed; paint read with the sheet makes thin metal "
                  "look thick.");
}

}  // namespace

void ask_about_gauge(Asking& asking) {
  ask_for_baselines(asking);
  ask_for_film(asking);
  ask_about_instrument(asking);
}

}  // namespace tinworm::weighing
