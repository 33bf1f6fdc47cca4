#include "scene/chart_plot.hpp"

#include <algorithm>

namespace tinworm::scene {
namespace {

constexpr double mm_per_thou = 0.0254;

// A repair between two readings counts for the later one, whichever survey tells of it.
std::vector<ChartPoint> points_of(const history::Comparison& comparison,
                                  const history::Place& place) {
  std::vector<ChartPoint> points;
  bool repaired = false;
  for (const history::Record& record : place.records) {
    repaired |= record.repaired;
    if (!record.thickness) continue;
    points.push_back({year_of(comparison, record.survey),
                      comparison.surveys[record.survey].survey.visit.date.year,
                      record.thickness->metal_mm, record.thickness->low_mm,
                      record.thickness->high_mm, repaired && !points.empty()});
    repaired = false;
  }
  return points;
}

void set_scale(ChartPlot& plot, quantity::Units units) {
  double low = plot.points[0].low_mm, high = plot.points[0].high_mm;
  const auto reach = [&](std::optional<double> each) {
    if (!each) return;
    low = std::min(low, *each);
    high = std::max(high, *each);
  };
  for (const ChartPoint& each : plot.points) reach(each.low_mm), reach(each.high_mm);
  reach(plot.sheet_mm);
  reach(plot.limit_mm);
  if (plot.band) reach(plot.band->low_mm);
  const bool inch = units == quantity::Units::inch;
  if (inch) plot.unit_mm = mm_per_thou;
  const std::vector<double> steps =
      inch ? std::vector<double>{2, 5, 10, 20, 50} : std::vector<double>{0.05, 0.1, 0.2, 0.5, 1};
  constexpr double least_apart_mm = 3.6;
  const int most = std::max(2, static_cast<int>(plot.area.height_mm / least_apart_mm));
  plot.scale = axis_over(low / plot.unit_mm, high / plot.unit_mm, steps, most);
}

// A little air on both sides, so that no error bar stands on the scale.
void set_years(ChartPlot& plot) {
  const double first = plot.points.front().year, last = plot.points.back().year;
  const double air = 0.04 * std::max(1.0, last - first);
  plot.first_year = first - air;
  plot.end_year = plot.band ? plot.band->to_year : last + air;
}

}  // namespace

ChartPlot plot_of(const history::Comparison& comparison, const history::Place& place,
                  quantity::Units units, const Area& area) {
  ChartPlot plot;
  plot.area = area;
  plot.points = points_of(comparison, place);
  plot.band = band_of(comparison, place);
  plot.sheet_mm = place.baseline_mm;
  // The limit is for metal that carries.
  const bool carries = comparison.zone_of(place).role != body::Role::skin;
  if (place.outlook && carries) plot.limit_mm = place.outlook->limit_mm;
  for (std::size_t i = 1; i < plot.points.size(); ++i) {
    if (plot.points[i].repaired)
      plot.history_from = (plot.points[i - 1].year + plot.points[i].year) / 2;
  }
  set_scale(plot, units);
  set_years(plot);
  return plot;
}

}  // namespace tinworm::scene
