#include "scene/thickness_chart.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/change_words.hpp"
#include "scene/chart_plot.hpp"
#include "scene/naming.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

using history::Comparison;

constexpr Style title_style{7.5, Font::bold, black, Says::words, 1.25};
constexpr Style rate_style{6.5, Font::regular, black, Says::words, 1.22};
constexpr Style figure_style{6.5, Font::regular, black, Says::scale, 1.2};
constexpr Stroke axis_stroke{ink, 0.5, {}};
constexpr Stroke join_stroke{soft_ink, 0.4, {}};
constexpr Stroke grid_stroke{grid_grey, 0.3, {}};

struct Chart {
  Page& page;
  ChartPlot plot;
  quantity::Units units;
  Measure measure;

  Layer& lines() const { return page.layer("lines"); }
  Layer& words() const { return page.layer("words"); }
  void rule(At from, At to, const Stroke& stroke) const {
    lines().items.push_back(Shape{{segment(from, to)}, {}, stroke});
  }
};

void draw_band(const Chart& chart) {
  if (!chart.plot.band) return;
  const Band& band = *chart.plot.band;
  const At from{chart.plot.x(band.from_year), chart.plot.y(band.from_mm)};
  const At low{chart.plot.x(band.to_year), chart.plot.y(band.low_mm)};
  const At high{chart.plot.x(band.to_year), chart.plot.y(band.high_mm)};
  auto& items = chart.lines().items;
  items.push_back(Shape{{Polyline{{from, high, low}, true}}, band_fill, {}});
  items.push_back(Shape{{segment(from, high), segment(from, low)}, {}, band_stroke});
}

void draw_scales(const Chart& chart) {
  const Area& area = chart.plot.area;
  const std::vector<double> ticks = chart.plot.scale.ticks();
  const bool inch = chart.units == quantity::Units::inch;
  for (const double tick : ticks) {
    const double y = chart.plot.y(tick * chart.plot.unit_mm);
    chart.rule({area.x_mm, y}, {area.right(), y}, grid_stroke);
    std::string text = fmt::format("{:.{}f}", tick,
                                   inch                           ? 0
                                   : chart.plot.scale.step < 0.09 ? 2
                                                                  : 1);
    if (tick == ticks.back()) text += inch ? " thou" : " mm";
    chart.words().items.push_back(
        set(text, figure_style, {area.x_mm - 1.2, y + 0.85}, Align::right, chart.measure));
  }
  chart.rule({area.x_mm, area.y_mm}, {area.x_mm, area.bottom()}, axis_stroke);
  chart.rule({area.x_mm, area.bottom()}, {area.right(), area.bottom()}, axis_stroke);
}

// The years of the surveys as far as there is room, first and last at least; none where the band
// runs.
void write_years(const Chart& chart) {
  const double y = chart.plot.area.bottom() + 3.4;
  std::vector<Area> taken;
  const auto label = [&](const ChartPoint& point) {
    const double x = chart.plot.x(point.year);
    const Text text = set(fmt::format("{}", point.calendar_year), figure_style, {x, y},
                          Align::centre, chart.measure);
    const auto near = [&](const Area& area) { return area.overlaps(text.area.grown(0.9)); };
    if (std::ranges::any_of(taken, near)) return;
    taken.push_back(text.area);
    chart.words().items.push_back(text);
    chart.rule({x, chart.plot.area.bottom()}, {x, chart.plot.area.bottom() + 0.9}, axis_stroke);
  };
  label(chart.plot.points.back());
  for (const ChartPoint& point : chart.plot.points) label(point);
  if (!chart.plot.band) return;
  Text planning =
      set("planning", figure_style, {chart.plot.area.right(), y}, Align::right, chart.measure);
  // Rather on beyond the plot than over the last year.
  const double over_mm = taken.front().right() + 1.2 - planning.area.x_mm;
  if (over_mm > 0)
    planning = set("planning", figure_style, {chart.plot.area.right() + over_mm, y}, Align::right,
                   chart.measure);
  chart.words().items.push_back(planning);
}

// Sheet and limit with their figures beside the plot, pushed apart where they lie close.
void draw_levels(const Chart& chart) {
  constexpr double least_apart_mm = 2.9;
  const double from = std::max(chart.plot.area.x_mm, chart.plot.x(chart.plot.history_from));
  std::optional<double> sheet_y, limit_y;
  const auto level = [&](double metal_mm, const Stroke& stroke) {
    const double y = chart.plot.y(metal_mm);
    chart.lines().items.push_back(
        Shape{{segment({from, y}, {chart.plot.area.right(), y})}, {}, stroke});
    return y;
  };
  if (chart.plot.sheet_mm) sheet_y = level(*chart.plot.sheet_mm, sheet_stroke);
  if (chart.plot.limit_mm) limit_y = level(*chart.plot.limit_mm, limit_stroke);
  if (sheet_y && limit_y && *limit_y - *sheet_y < least_apart_mm) {
    const double middle = (*sheet_y + *limit_y) / 2;
    sheet_y = middle - least_apart_mm / 2;
    limit_y = middle + least_apart_mm / 2;
  }
  const auto name = [&](std::string_view word, double metal_mm, double y) {
    chart.words().items.push_back(
        set(fmt::format("{} {}", word, sheet_figure(metal_mm, chart.units)), figure_style,
            {chart.plot.area.right() + 1.2, y + 0.85}, Align::left, chart.measure));
  };
  if (sheet_y) name("sheet", *chart.plot.sheet_mm, *sheet_y);
  if (limit_y) name("limit", *chart.plot.limit_mm, *limit_y);
}

Area bar_of(const Chart& chart, const ChartPoint& point) {
  const double top = chart.plot.y(point.high_mm);
  return Area{chart.plot.x(point.year), top, 0, chart.plot.y(point.low_mm) - top}.grown(cap_mm);
}

// "repaired" beside a line at `x`, at the foot of the plot or the top, where nothing stands yet.
std::optional<Text> repair_words(const Chart& chart, double x, const std::vector<Area>& taken) {
  for (const double y : {chart.plot.area.bottom() - 1, chart.plot.area.y_mm + 2.6}) {
    for (const Align side : {Align::left, Align::right}) {
      const double at = side == Align::left ? x + 0.8 : x - 0.8;
      const Text text = set("repaired", figure_style, {at, y}, side, chart.measure);
      const auto lies_on = [&](const Area& area) { return area.overlaps(text.area); };
      if (chart.plot.area.contains(text.area) && std::ranges::none_of(taken, lies_on)) return text;
    }
  }
  return std::nullopt;
}

// Where a repair starts a new history.
void draw_repairs(const Chart& chart) {
  std::vector<Area> taken;
  for (const ChartPoint& each : chart.plot.points) taken.push_back(bar_of(chart, each));
  for (std::size_t i = 1; i < chart.plot.points.size(); ++i) {
    if (!chart.plot.points[i].repaired) continue;
    const double x = chart.plot.x((chart.plot.points[i - 1].year + chart.plot.points[i].year) / 2);
    chart.lines().items.push_back(Shape{
        {segment({x, chart.plot.area.y_mm}, {x, chart.plot.area.bottom()})}, {}, repair_stroke});
    const auto text = repair_words(chart, x, taken);
    if (!text) continue;  // the key says it
    taken.push_back(text->area.grown(0.5));
    chart.lines().items.push_back(Shape{{polyline(text->area)}, paper, {}});
    chart.words().items.push_back(*text);
  }
}

void draw_points(const Chart& chart) {
  auto& items = chart.lines().items;
  for (std::size_t i = 1; i < chart.plot.points.size(); ++i) {
    const ChartPoint &before = chart.plot.points[i - 1], &now = chart.plot.points[i];
    if (now.repaired) continue;
    items.push_back(Shape{{segment({chart.plot.x(before.year), chart.plot.y(before.mm)},
                                   {chart.plot.x(now.year), chart.plot.y(now.mm)})},
                          {},
                          join_stroke});
  }
  for (const ChartPoint& each : chart.plot.points) {
    const double x = chart.plot.x(each.year), low = chart.plot.y(each.low_mm),
                 high = chart.plot.y(each.high_mm);
    items.push_back(
        Shape{{segment({x, low}, {x, high}), segment({x - cap_mm, low}, {x + cap_mm, low}),
               segment({x - cap_mm, high}, {x + cap_mm, high})},
              {},
              bar_stroke});
    items.push_back(
        Shape{{circle({x, chart.plot.y(each.mm)}, point_mm, 24)}, ink, Stroke{paper, 0.4, {}}});
  }
}

std::string subtitle(const history::Place& place, quantity::Units units) {
  std::string text = rate_words(place, units);
  if (place.outlook && place.outlook->past_limit)
    text += fmt::format("{}past{}the{}limit", text.empty() ? "" : "; ", no_break, no_break);
  return text;
}

std::string title_of(const Comparison& comparison, const history::Place& place) {
  const std::string words = capitalised(place_words(comparison, place));
  return place.zone == 0 ? words : fmt::format("{:02}  {}", place.zone, words);
}

}  // namespace

ChartParts draw_thickness_chart(Page& page, const Comparison& comparison,
                                const history::Place& place, quantity::Units units,
                                const Area& area, const Measure& measure) {
  constexpr double scale_mm = 11, levels_mm = 15, years_mm = 4.6, over_mm = 2.2;
  Layer& words = page.layer("words");
  double y = area.y_mm;
  y += set_block(words, title_of(comparison, place), title_style, {area.x_mm, y}, area.width_mm,
                 measure, 1);
  set_block(words, subtitle(place, units), rate_style, {area.x_mm, y}, area.width_mm, measure, 2);
  y += 2 * line_height_mm(rate_style) + over_mm;
  const Area where{area.x_mm + scale_mm, y, area.width_mm - scale_mm - levels_mm,
                   area.bottom() - years_mm - y};
  const Chart chart{page, plot_of(comparison, place, units, where), units, measure};
  draw_band(chart);
  draw_scales(chart);
  draw_levels(chart);
  draw_repairs(chart);
  draw_points(chart);
  write_years(chart);
  const ChartPlot& plot = chart.plot;
  return {plot.sheet_mm.has_value(), plot.limit_mm.has_value(), plot.band.has_value(),
          std::ranges::any_of(plot.points, &ChartPoint::repaired), plot.scale.low > 0};
}

}  // namespace tinworm::scene
