#include "scene/thickness_chart.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "scene/axis.hpp"
#include "scene/change_words.hpp"
#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

using history::Comparison;

const Style title_style{7.5, Font::bold, black, Says::words, 1.25};
const Style rate_style{6.5, Font::regular, black, Says::words, 1.22};
const Style figure_style{6.5, Font::regular, black, Says::scale, 1.2};
const Stroke sheet_stroke{soft_ink, 0.5, {2.2, 0.7, 0.3, 0.7}};
const Stroke limit_stroke{ink, 0.9, {}};
const Stroke repair_stroke{repair_ink, 0.6, {0.9, 0.7}};
const Stroke bar_stroke{ink, 0.6, {}};
const Stroke band_stroke{soft_ink, 0.4, {0.9, 0.7}};
const Stroke join_stroke{soft_ink, 0.4, {}};
const Stroke grid_stroke{from_oklch(0.86, 0.003, 60), 0.3, {}};
const Colour band_fill = from_oklch(0.90, 0.004, 60);
constexpr double mm_per_thou = 0.0254, point_mm = 0.65, cap_mm = 0.7;

struct Point {
  double year, mm, low_mm, high_mm;
  bool repaired;  // since the survey before
};

double year_of(const Comparison& comparison, std::size_t survey) {
  return comparison.surveys[survey].survey.visit.date.middle_year();
}

// A repair between two readings counts for the later one, whichever survey tells of it.
std::vector<Point> points_of(const Comparison& comparison, const history::Place& place) {
  std::vector<Point> points;
  bool repaired = false;
  for (const history::Record& record : place.records) {
    repaired |= record.repaired;
    if (!record.thickness) continue;
    points.push_back({year_of(comparison, record.survey), record.thickness->metal_mm,
                      record.thickness->low_mm, record.thickness->high_mm,
                      repaired && !points.empty()});
    repaired = false;
  }
  return points;
}

struct Chart {
  Page& page;
  const Comparison& comparison;
  const history::Place& place;
  quantity::Units units;
  const Measure& measure;
  std::vector<Point> points;
  std::optional<Band> band;
  std::optional<double> sheet_mm, limit_mm;
  double history_from = 0;  // year from which sheet and limit are drawn: the last repair
  Axis mm, years;           // mm in the unit of `units`
  double last_year = 0, end_year = 0;
  Area plot;

  double unit() const { return units == quantity::Units::inch ? mm_per_thou : 1; }
  double x(double year) const {
    return plot.x_mm + plot.width_mm * (year - years.low) / (end_year - years.low);
  }
  double y(double metal_mm) const {
    return plot.bottom() - plot.height_mm * (metal_mm / unit() - mm.low) / (mm.high - mm.low);
  }
  Layer& lines() const { return page.layer("lines"); }
  Layer& words() const { return page.layer("words"); }
};

void set_axes(Chart& chart) {
  double low = chart.points[0].low_mm, high = chart.points[0].high_mm;
  const auto reach = [&](std::optional<double> each) {
    if (!each) return;
    low = std::min(low, *each);
    high = std::max(high, *each);
  };
  for (const Point& each : chart.points) reach(each.low_mm), reach(each.high_mm);
  reach(chart.sheet_mm);
  reach(chart.limit_mm);
  if (chart.band) reach(chart.band->low_mm);
  const bool inch = chart.units == quantity::Units::inch;
  const std::vector<double> steps =
      inch ? std::vector<double>{2, 5, 10, 20, 50} : std::vector<double>{0.05, 0.1, 0.2, 0.5, 1};
  const int most = std::max(2, static_cast<int>(chart.plot.height_mm / 3.6));
  chart.mm = axis_over(low / chart.unit(), high / chart.unit(), steps, most);

  chart.last_year = chart.points.back().year;
  const double first = chart.points.front().year;
  const int labels = std::max(1, static_cast<int>(chart.plot.width_mm / 11));
  chart.end_year = chart.band ? chart.band->to_year : std::ceil(chart.last_year);
  chart.years = axis_over(std::floor(first), chart.end_year, {1, 2, 5, 10, 20, 50}, labels);
  chart.years.low = std::floor(first);
}

void draw_band(const Chart& chart) {
  if (!chart.band) return;
  const Band& band = *chart.band;
  const At from{chart.x(band.from_year), chart.y(band.from_mm)};
  const At low{chart.x(band.to_year), chart.y(band.low_mm)};
  const At high{chart.x(band.to_year), chart.y(band.high_mm)};
  auto& items = chart.lines().items;
  items.push_back(Shape{{Polyline{{from, high, low}, true}}, band_fill, {}});
  items.push_back(Shape{{segment(from, high), segment(from, low)}, {}, band_stroke});
}

void draw_scales(const Chart& chart) {
  auto& items = chart.lines().items;
  const Area& plot = chart.plot;
  const std::vector<double> ticks = chart.mm.ticks();
  const bool inch = chart.units == quantity::Units::inch;
  for (const double tick : ticks) {
    const double y = chart.y(tick * chart.unit());
    items.push_back(Shape{{segment({plot.x_mm, y}, {plot.right(), y})}, {}, grid_stroke});
    std::string text = fmt::format("{:.{}f}", tick, inch ? 0 : chart.mm.step < 0.09 ? 2 : 1);
    if (tick == ticks.back()) text += inch ? " thou" : " mm";
    chart.words().items.push_back(
        set(text, figure_style, {plot.x_mm - 1.2, y + 0.85}, Align::right, chart.measure));
  }
  items.push_back(Shape{{segment({plot.x_mm, plot.y_mm}, {plot.x_mm, plot.bottom()}),
                         segment({plot.x_mm, plot.bottom()}, {plot.right(), plot.bottom()})},
                        {},
                        Stroke{ink, 0.5, {}}});
}

// Whole years up to the last survey, no year where the band runs.
void write_years(const Chart& chart) {
  const double y = chart.plot.bottom() + 3.4;
  std::optional<Text> planning;
  if (chart.band)
    planning = set("planning", figure_style, {chart.plot.right(), y}, Align::right, chart.measure);
  for (double year = chart.years.low; year <= chart.last_year; year += chart.years.step) {
    const double x = chart.x(year);
    chart.lines().items.push_back(
        Shape{{segment({x, chart.plot.bottom()}, {x, chart.plot.bottom() + 0.9})},
              {},
              Stroke{ink, 0.5, {}}});
    Text text =
        set(fmt::format("{:.0f}", year), figure_style, {x, y}, Align::centre, chart.measure);
    if (planning && text.area.grown(0.6).overlaps(planning->area)) continue;
    chart.words().items.push_back(std::move(text));
  }
  if (planning) chart.words().items.push_back(*planning);
}

// Sheet and limit with their figures beside the plot, pushed apart where they lie close.
void draw_levels(const Chart& chart) {
  constexpr double least_apart_mm = 2.9;
  const double from = std::max(chart.plot.x_mm, chart.x(chart.history_from));
  std::optional<double> sheet_y, limit_y;
  const auto level = [&](double metal_mm, const Stroke& stroke) {
    const double y = chart.y(metal_mm);
    chart.lines().items.push_back(Shape{{segment({from, y}, {chart.plot.right(), y})}, {}, stroke});
    return y;
  };
  if (chart.sheet_mm) sheet_y = level(*chart.sheet_mm, sheet_stroke);
  if (chart.limit_mm) limit_y = level(*chart.limit_mm, limit_stroke);
  if (sheet_y && limit_y && *limit_y - *sheet_y < least_apart_mm) {
    const double middle = (*sheet_y + *limit_y) / 2;
    sheet_y = middle - least_apart_mm / 2;
    limit_y = middle + least_apart_mm / 2;
  }
  const auto name = [&](std::string_view word, double metal_mm, double y) {
    chart.words().items.push_back(
        set(fmt::format("{} {}", word, sheet_figure(metal_mm, chart.units)), figure_style,
            {chart.plot.right() + 1.2, y + 0.85}, Align::left, chart.measure));
  };
  if (sheet_y) name("sheet", *chart.sheet_mm, *sheet_y);
  if (limit_y) name("limit", *chart.limit_mm, *limit_y);
}

Area bar_of(const Chart& chart, const Point& point) {
  const double top = chart.y(point.high_mm);
  return Area{chart.x(point.year), top, 0, chart.y(point.low_mm) - top}.grown(cap_mm);
}

// "repaired" beside a line at `x`, at the foot of the plot or the top, where nothing stands yet.
std::optional<Text> repair_words(const Chart& chart, double x, const std::vector<Area>& taken) {
  for (const double y : {chart.plot.bottom() - 1, chart.plot.y_mm + 2.6}) {
    for (const Align side : {Align::left, Align::right}) {
      const double at = side == Align::left ? x + 0.8 : x - 0.8;
      const Text text = set("repaired", figure_style, {at, y}, side, chart.measure);
      const auto lies_on = [&](const Area& area) { return area.overlaps(text.area); };
      if (chart.plot.contains(text.area) && std::ranges::none_of(taken, lies_on)) return text;
    }
  }
  return std::nullopt;
}

// Where a repair starts a new history.
void draw_repairs(const Chart& chart) {
  std::vector<Area> taken;
  for (const Point& each : chart.points) taken.push_back(bar_of(chart, each));
  for (std::size_t i = 1; i < chart.points.size(); ++i) {
    if (!chart.points[i].repaired) continue;
    const double x = chart.x((chart.points[i - 1].year + chart.points[i].year) / 2);
    chart.lines().items.push_back(
        Shape{{segment({x, chart.plot.y_mm}, {x, chart.plot.bottom()})}, {}, repair_stroke});
    const auto text = repair_words(chart, x, taken);
    if (!text) continue;  // the key says it
    taken.push_back(text->area.grown(0.5));
    chart.lines().items.push_back(Shape{{polyline(text->area)}, paper, {}});
    chart.words().items.push_back(*text);
  }
}

void draw_points(const Chart& chart) {
  auto& items = chart.lines().items;
  for (std::size_t i = 1; i < chart.points.size(); ++i) {
    const Point &before = chart.points[i - 1], &now = chart.points[i];
    if (now.repaired) continue;
    items.push_back(Shape{
        {segment({chart.x(before.year), chart.y(before.mm)}, {chart.x(now.year), chart.y(now.mm)})},
        {},
        join_stroke});
  }
  for (const Point& each : chart.points) {
    const double x = chart.x(each.year), low = chart.y(each.low_mm), high = chart.y(each.high_mm);
    items.push_back(
        Shape{{segment({x, low}, {x, high}), segment({x - cap_mm, low}, {x + cap_mm, low}),
               segment({x - cap_mm, high}, {x + cap_mm, high})},
              {},
              bar_stroke});
    items.push_back(
        Shape{{circle({x, chart.y(each.mm)}, point_mm, 24)}, ink, Stroke{paper, 0.4, {}}});
  }
}

std::string subtitle(const history::Place& place, quantity::Units units) {
  std::string text = rate_words(place, units);
  if (place.outlook && place.outlook->past_limit)
    text += (text.empty() ? "" : "; ") + std::string("past the limit");
  return text;
}

Chart chart_of(Page& page, const Comparison& comparison, const history::Place& place,
               quantity::Units units, const Measure& measure) {
  Chart chart{page, comparison, place, units, measure};
  chart.points = points_of(comparison, place);
  chart.band = band_of(comparison, place);
  chart.sheet_mm = place.baseline_mm;
  // The limit is for metal that carries.
  const bool carries = comparison.zone_of(place).role != body::Role::skin;
  if (place.outlook && carries) chart.limit_mm = place.outlook->limit_mm;
  for (std::size_t i = 1; i < chart.points.size(); ++i) {
    if (chart.points[i].repaired)
      chart.history_from = (chart.points[i - 1].year + chart.points[i].year) / 2;
  }
  return chart;
}

std::string title_of(const Comparison& comparison, const history::Place& place) {
  const std::string words = capitalised(place_words(comparison, place));
  return place.zone == 0 ? words : fmt::format("{:02}  {}", place.zone, words);
}

}  // namespace

std::optional<Band> band_of(const Comparison& comparison, const history::Place& place) {
  constexpr double longest_years = 5;
  const auto& now = place.last().thickness;
  if (!now || !place.rate) return std::nullopt;
  const double last = year_of(comparison, place.last().survey);
  const double history = last - points_of(comparison, place).front().year;
  const double years = std::min(history, longest_years);
  if (years <= 0) return std::nullopt;
  // Metal doesn't grow, and there is no less than none of it.
  const auto left = [&](double rate) {
    return std::max(0.0, now->metal_mm - std::max(0.0, rate) * years);
  };
  return Band{last, last + years, now->metal_mm, left(place.rate->per_year.high),
              left(place.rate->per_year.low)};
}

ChartParts draw_thickness_chart(Page& page, const Comparison& comparison,
                                const history::Place& place, quantity::Units units,
                                const Area& area, const Measure& measure) {
  constexpr double scale_mm = 11, levels_mm = 15, years_mm = 4.6, over_mm = 2.2;
  Chart chart = chart_of(page, comparison, place, units, measure);
  double y = area.y_mm;
  y += set_block(chart.words(), title_of(comparison, place), title_style, {area.x_mm, y},
                 area.width_mm, measure, 1);
  set_block(chart.words(), subtitle(place, units), rate_style, {area.x_mm, y}, area.width_mm,
            measure, 2);
  y += 2 * line_height_mm(rate_style) + over_mm;
  chart.plot = {area.x_mm + scale_mm, y, area.width_mm - scale_mm - levels_mm,
                area.bottom() - years_mm - y};
  set_axes(chart);
  draw_band(chart);
  draw_scales(chart);
  draw_levels(chart);
  draw_repairs(chart);
  draw_points(chart);
  write_years(chart);
  const bool repaired = std::ranges::any_of(chart.points, &Point::repaired);
  return {chart.sheet_mm.has_value(), chart.limit_mm.has_value(), chart.band.has_value(), repaired,
          chart.mm.low > 0};
}

std::vector<LegendEntry> key_of(const ChartParts& used, double limit_share) {
  const double y = swatch_height_mm / 2, middle = swatch_width_mm / 2;
  const auto line = [&](std::string words, const Stroke& stroke) {
    return LegendEntry{
        std::move(words), "", {Shape{{segment({0, y}, {swatch_width_mm, y})}, {}, stroke}}};
  };
  std::vector<LegendEntry> entries{
      {"metal left, with its 95 % range",
       "",
       {Shape{{segment({middle, 0.2}, {middle, swatch_height_mm - 0.2}),
               segment({middle - cap_mm, 0.2}, {middle + cap_mm, 0.2}),
               segment({middle - cap_mm, swatch_height_mm - 0.2},
                       {middle + cap_mm, swatch_height_mm - 0.2})},
              {},
              bar_stroke},
        Shape{{circle({middle, y}, point_mm, 24)}, ink, {}}}}};
  if (used.sheet) entries.push_back(line("sheet as it was", sheet_stroke));
  if (used.limit)
    entries.push_back(
        line(fmt::format("limit for load-bearing sheet, {:.4g} % of the sheet", 100 * limit_share),
             limit_stroke));
  if (used.repair)
    entries.push_back(
        {"repaired, a new history starts",
         "",
         {Shape{{segment({middle, 0}, {middle, swatch_height_mm})}, {}, repair_stroke}}});
  if (used.band)
    entries.push_back(
        {"planning range, no date of failure",
         "",
         {Shape{
              {Polyline{{{0, y}, {swatch_width_mm, 0.3}, {swatch_width_mm, swatch_height_mm - 0.1}},
                        true}},
              band_fill,
              {}},
          Shape{{segment({0, y}, {swatch_width_mm, 0.3}),
                 segment({0, y}, {swatch_width_mm, swatch_height_mm - 0.1})},
                {},
                band_stroke}}});
  return entries;
}

}  // namespace tinworm::scene
