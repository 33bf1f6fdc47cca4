// Metal left by year at one place: readings with their 95 % error, the sheet as it was, the limit,
// and a short planning band. Never a date of failure: no year is written where the band runs.
#pragma once

#include <optional>
#include <vector>

#include "history/comparison.hpp"
#include "quantity/length.hpp"
#include "scene/legend.hpp"
#include "scene/page.hpp"

namespace tinworm::scene {

// What lies beyond the last survey: from its reading between both ends of the rate. At most as long
// as the history and at most five years. None without a rate or a reading in the last survey.
struct Band {
  double from_year = 0, to_year = 0;
  double from_mm = 0, low_mm = 0, high_mm = 0;  // low and high at its end
};
std::optional<Band> band_of(const history::Comparison& comparison, const history::Place& place);

struct ChartParts {  // what a chart uses, for the key
  bool sheet = false, limit = false, band = false, repair = false;
  bool cut_off = false;  // its scale doesn't start at nought
};

// Title, rate in words and plot. `place` must have a thickness in some survey.
ChartParts draw_thickness_chart(Page& page, const history::Comparison& comparison,
                                const history::Place& place, quantity::Units units,
                                const Area& area, const Measure& measure);

// `limit_share`: of the sheet, that load-bearing metal must keep.
std::vector<LegendEntry> key_of(const ChartParts& used, double limit_share);

}  // namespace tinworm::scene
