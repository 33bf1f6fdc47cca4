#include "scene/charts.hpp"

#include <algorithm>

#include "scene/palette.hpp"
#include "scene/setting.hpp"
#include "scene/thickness_chart.hpp"

namespace tinworm::scene {
namespace {

constexpr Style heading_style{11.5, Font::bold, black, Says::title, 1.3};
constexpr Style note_style{6.5, Font::regular, soft_ink, Says::words, 1.22};
constexpr Style key_style{7, Font::regular, black, Says::legend, 1.2};
constexpr double head_mm = 10, key_mm = 9.6, gap_mm = 5, tallest_mm = 62;

bool often_read(const history::Place& place) {
  return std::ranges::count_if(place.records, [](const history::Record& each) {
           return each.thickness.has_value();
         }) >= 2;
}

// One row of up to three, or two rows.
std::size_t columns_for(std::size_t charts) {
  return charts <= 3 ? charts : (charts + 1) / 2;
}

ChartParts together(const ChartParts& a, const ChartParts& b) {
  return {a.sheet || b.sheet, a.limit || b.limit, a.band || b.band, a.repair || b.repair,
          a.cut_off || b.cut_off};
}

}  // namespace

std::vector<const history::Place*> charted(const history::Comparison& comparison) {
  std::vector<const history::Place*> places;
  for (const history::Place* place : comparison.by_change())
    if (often_read(*place)) places.push_back(place);
  const auto same = [](const history::Place* place) {
    return place->change == history::Change::same;
  };
  if (!std::ranges::all_of(places, same)) std::erase_if(places, same);
  if (places.size() > most_charts) places.resize(most_charts);
  return places;
}

void draw_charts(Page& page, const history::Comparison& comparison,
                 const std::vector<const history::Place*>& places, quantity::Units units,
                 const Area& room, const Measure& measure) {
  if (places.empty()) return;
  Layer& words = page.layer("words");
  words.items.push_back(
      set("Metal left", heading_style, {room.x_mm, room.y_mm + 4}, Align::left, measure));
  const std::size_t columns = columns_for(places.size());
  const std::size_t rows = (places.size() + columns - 1) / columns;
  // A chart alone needn't be as wide as the page.
  const double most_columns = std::max(2.0, static_cast<double>(columns));
  const double width = (room.width_mm + gap_mm) / most_columns;
  const double height = std::min(tallest_mm + gap_mm / 2,
                                 (room.height_mm - head_mm - key_mm) / static_cast<double>(rows));
  ChartParts used;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const std::size_t in_row = i % columns, row_of = i / columns;
    const auto column = static_cast<double>(in_row), row = static_cast<double>(row_of);
    const Area area{room.x_mm + column * width, room.y_mm + head_mm + row * height, width - gap_mm,
                    height - gap_mm / 2};
    used = together(used, draw_thickness_chart(page, comparison, *places[i], units, area, measure));
  }
  std::string note = "At the places that changed most, by year.";
  if (used.cut_off) note += " The scales don\u2019t start at nought.";
  note +=
      " The bars hold the gauge\u2019s own error too, which cancels where one gauge read them all.";
  page.layer("words").items.push_back(
      set(note, note_style, {room.x_mm, room.y_mm + 7.8}, Align::left, measure));
  set_key_row(page.layer("words"), key_of(used, comparison.latest().constants.repair_limit),
              key_style,
              {room.x_mm, room.y_mm + head_mm + height * static_cast<double>(rows) + 1.2,
               room.width_mm, key_mm},
              measure);
}

}  // namespace tinworm::scene
