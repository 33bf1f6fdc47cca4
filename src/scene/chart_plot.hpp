// Where years and thicknesses of one place stand on a chart.
#pragma once

#include <optional>
#include <vector>

#include "history/comparison.hpp"
#include "quantity/length.hpp"
#include "scene/axis.hpp"
#include "scene/page.hpp"
#include "scene/planning_band.hpp"

namespace tinworm::scene {

struct ChartPoint {  // one survey's reading
  double year = 0;
  int calendar_year = 0;
  double mm = 0, low_mm = 0, high_mm = 0;  // 95 %
  bool repaired = false;                   // since the survey before
};

struct ChartPlot {
  Area area;
  std::vector<ChartPoint> points;  // one at least
  std::optional<Band> band;
  std::optional<double> sheet_mm, limit_mm;
  double history_from = 0;  // year from which sheet and limit are drawn: the last repair
  Axis scale;               // in units of `unit_mm`
  double unit_mm = 1;
  double first_year = 0, end_year = 0;  // at the plot's sides

  double x(double year) const {
    return area.x_mm + area.width_mm * (year - first_year) / (end_year - first_year);
  }
  double y(double metal_mm) const {
    return area.bottom() -
           area.height_mm * (metal_mm / unit_mm - scale.low) / (scale.high - scale.low);
  }
};

// `place` must have a thickness in some survey.
ChartPlot plot_of(const history::Comparison& comparison, const history::Place& place,
                  quantity::Units units, const Area& area);

}  // namespace tinworm::scene
