#include "scene/year_maps.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "scene/body_view.hpp"
#include "scene/drafting.hpp"
#include "scene/legend.hpp"
#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/sheet.hpp"
#include "scene/texture.hpp"

namespace tinworm::scene {
namespace {

constexpr Style heading_style{11.5, Font::bold, black, Says::title, 1.3};
constexpr Style note_style{6.5, Font::regular, soft_ink, Says::words, 1.22};
constexpr Style date_style{8, Font::bold, black, Says::title, 1.2};
constexpr Style verdict_style{7, Font::regular, black, Says::words, 1.2};
constexpr Style key_style{7, Font::regular, black, Says::legend, 1.2};
constexpr double cell_gap_mm = 4, head_mm = 10, key_mm = 9.6, captions_mm = 12.5;

SheetKind kind_of(const body::Plan& plan) {
  return lay_out(SheetKind::structure, plan, Paper::a3).empty() ? SheetKind::skin
                                                                : SheetKind::structure;
}

// Date, verdict, and no more than fits.
void name_year(Layer& layer, const weighing::Result& result, const Area& cell,
               const Measure& measure) {
  const auto line = [&](const std::string& text, const Style& style, double down) {
    layer.items.push_back(set(cut(text, style, cell.width_mm, measure), style,
                              {cell.middle().x_mm, cell.y_mm + down}, Align::centre, measure));
  };
  line(result.survey.visit.date.text(), date_style, 3.2);
  line(capitalised(weighing::sentence(result.verdict)), verdict_style, 6.6);
  if (const std::string open = left_open(result); !open.empty()) line(open, verdict_style, 9.6);
}

void draw_small(Page& page, const weighing::Result& result, const Sheet& sheet,
                const Measure& measure, Used& used) {
  const DiagramOptions options;
  Drafting drafting{page, sheet, result, options, measure, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  drafting.dress.strokes = 0.45;
  drafting.dress.zone = [&used](const DrawnZone& drawn) -> Item {
    const weighing::Step step = drawn.zone->step;
    if (step == weighing::Step::not_seen) used.not_seen = true;
    if (step != weighing::Step::not_seen) used.zones.insert(step);
    return pale_fill(step, drawn.shape);
  };
  draw_body(drafting);
  used.not_fitted |= drafting.used.not_fitted;
}

std::string heading_note(std::size_t shown, std::size_t surveys, int scale) {
  std::string text = fmt::format(
      "The structure as each survey found it: left side, underneath, right side, front and rear, "
      "all at 1:{}.",
      scale);
  if (shown < surveys) text += fmt::format(" {} of {} surveys are shown.", shown, surveys);
  return text;
}

// The room of one survey, its date and verdict at the top.
Area cell_of(const Area& room, std::size_t i, std::size_t count) {
  const double width = (room.width_mm + cell_gap_mm) / static_cast<double>(count);
  return {room.x_mm + static_cast<double>(i) * width, room.y_mm + head_mm, width - cell_gap_mm,
          room.height_mm - head_mm - key_mm};
}

std::optional<Sheet> sheet_in(const Area& cell, const body::Plan& plan, int largest_scale) {
  Area where = cell;
  where.y_mm += captions_mm;
  where.height_mm -= captions_mm;
  return lay_out_small(kind_of(plan), plan, where, largest_scale);
}

void write_head(Layer& words, const std::string& note, const Area& room, const Measure& measure) {
  words.items.push_back(
      set("Year by year", heading_style, {room.x_mm, room.y_mm + 4}, Align::left, measure));
  words.items.push_back(set(note, note_style, {room.x_mm, room.y_mm + 7.8}, Align::left, measure));
}

}  // namespace

std::vector<std::size_t> years_shown(std::size_t surveys) {
  const std::size_t count = std::min(surveys, most_year_maps);
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < count; ++i) {
    shown.push_back(count < 2 ? 0 : (i * (surveys - 1) + (count - 1) / 2) / (count - 1));
  }
  return shown;
}

double draw_year_maps(Page& page, const history::Comparison& comparison, const Area& room,
                      const Measure& measure) {
  const std::vector<std::size_t> shown = years_shown(comparison.surveys.size());
  const auto cell = [&](std::size_t i) { return cell_of(room, i, shown.size()); };
  // One scale for all, though the plan may have grown from version to version.
  int scale = 0;
  const auto sheet_of = [&](std::size_t i) {
    return sheet_in(cell(i), *comparison.surveys[shown[i]].body, scale);
  };
  for (std::size_t i = 0; i < shown.size(); ++i)
    if (const auto sheet = sheet_of(i)) scale = std::max(scale, sheet->scale);
  write_head(page.layer("words"), heading_note(shown.size(), comparison.surveys.size(), scale),
             room, measure);

  Used used;
  double drawn_mm = 0;
  for (std::size_t i = 0; i < shown.size(); ++i) {
    const weighing::Result& result = comparison.surveys[shown[i]];
    const auto sheet = sheet_of(i);
    if (!sheet) continue;
    name_year(page.layer("words"), result, cell(i), measure);
    draw_small(page, result, *sheet, measure, used);
    drawn_mm = std::max(drawn_mm, sheet->drawing.bottom() - cell(i).y_mm);
  }
  const double key_y = room.y_mm + head_mm + drawn_mm + 3;
  const double key_height =
      set_key_row(page.layer("words"), legend_of(used, comparison.latest().constants), key_style,
                  {room.x_mm, key_y, room.width_mm, key_mm}, measure);
  return key_y + key_height - room.y_mm;
}

}  // namespace tinworm::scene
