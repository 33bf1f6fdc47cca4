// Metal left by year at one place: readings with their 95 % error, the sheet as it was, the limit,
// and a short planning band. Never a date of failure: no year is written where the band runs.
#pragma once

#include "history/comparison.hpp"
#include "quantity/length.hpp"
#include "scene/chart_key.hpp"
#include "scene/page.hpp"

namespace tinworm::scene {

// Title, rate in words and plot. `place` must have a thickness in some survey.
ChartParts draw_thickness_chart(Page& page, const history::Comparison& comparison,
                                const history::Place& place, quantity::Units units,
                                const Area& area, const Measure& measure);

}  // namespace tinworm::scene
