#include "scene/small_map.hpp"

#include <optional>

#include <fmt/format.h>

#include "scene/body_view.hpp"
#include "scene/drafting.hpp"
#include "scene/label.hpp"
#include "scene/legend.hpp"
#include "scene/palette.hpp"
#include "scene/sheet.hpp"
#include "scene/spot_mark.hpp"

namespace tinworm::scene {
namespace {

constexpr Style key_style{7, Font::regular, black, Says::legend, 1.2};
constexpr Style caption_style{6.5, Font::regular, soft_ink, Says::view_name, 1.2};
constexpr double above_key_mm = 1.6;

std::string caption_of(body::View view) {
  const bool below = view == body::View::underneath;
  return below ? fmt::format("{}, {}", view_name(view), view_note(view))
               : std::string(view_name(view));
}

void name_views(Page& page, const Sheet& sheet, const Measure& measure) {
  for (const PlacedView& view : sheet.views)
    page.layer("words").items.push_back(set(caption_of(view.projection.view), caption_style,
                                            {view.area.middle().x_mm, view.area.bottom() + 2.8},
                                            Align::centre, measure));
}

// Without the stations where nothing was found.
weighing::Result with_findings_alone(weighing::Result result) {
  for (weighing::Zone& zone : result.zones)
    std::erase_if(zone.spots, [](const weighing::Spot& spot) { return spot.rank == 0; });
  return result;
}

std::string row_words(const LegendEntry& entry) {
  switch (entry.sign) {
    case KeySign::judged_edge:
      return "broken edge: judged";
    case KeySign::symbol:
      return "triangle: not to scale";
    case KeySign::open_mark:
    case KeySign::ground:
      return entry.words + ": " + entry.meaning;
    case KeySign::repair:
      return entry.words + ", " + entry.meaning;
    default:
      return entry.words;
  }
}

// A row has no room for meanings: only those stay whose words say nothing, or not which, alone.
std::vector<LegendEntry> key_of(const Used& used, const rules::Rules& rules) {
  std::vector<LegendEntry> entries = legend_of(used, rules);
  for (LegendEntry& entry : entries) entry.words = row_words(entry);
  return entries;
}

std::optional<Sheet> sheet_in(const Area& room, const body::Plan& plan) {
  for (const SheetKind kind : {SheetKind::structure, SheetKind::skin})
    if (auto sheet = lay_out_rows(kind, plan, room)) return sheet;
  return std::nullopt;
}

Area above_key(Area room, double key_mm) {
  room.height_mm -= key_mm + above_key_mm;
  return room;
}

struct Drawn {
  double bottom_mm = 0;
  Used used;
};

// None where the room is too small; nothing is then drawn.
std::optional<Drawn> draw_views(Page& page, const weighing::Result& shown, const Area& room,
                                const Measure& measure) {
  const std::optional<Sheet> sheet = sheet_in(room, *shown.body);
  if (!sheet) return std::nullopt;
  for (const char* name :
       {"zones", "repairs", "bounds", "lines", "circles", "spots", "leaders", "words", "ranks"})
    page.layer(name);
  const DiagramOptions options;
  Drafting drafting{page, *sheet, shown, options, measure, FreeSpace(sheet->drawing),
                    {},   {},     {},    {}};
  drafting.dress.strokes = 0.6;
  draw_body(drafting);
  draw_spots(drafting);
  ring_ranks(drafting, {}, 3);
  name_views(page, *sheet, measure);
  // The lines' weights and the ring explain themselves or are told on the sheets.
  drafting.used.roles.clear();
  drafting.used.ranks = drafting.used.unranked = false;
  return Drawn{sheet->drawing.bottom(), drafting.used};
}

}  // namespace

double draw_small_map(Page& page, const weighing::Result& result, const Area& room,
                      const Measure& measure) {
  const weighing::Result shown = with_findings_alone(result);
  // How high the key is depends on what is drawn: a trial tells.
  Page trial;
  const auto tried = draw_views(trial, shown, above_key(room, 0), measure);
  if (!tried) return 0;
  const auto set_key = [&](Layer& layer, double y_mm) {
    return set_key_row(layer, key_of(tried->used, result.constants), key_style,
                       {room.x_mm, y_mm, room.width_mm, 0}, measure);
  };
  Layer key;
  const double key_mm = set_key(key, 0);
  const auto drawn = draw_views(page, shown, above_key(room, key_mm), measure);
  if (!drawn) return 0;
  set_key(page.layer("words"), drawn->bottom_mm + above_key_mm);
  return drawn->bottom_mm + above_key_mm + key_mm - room.y_mm;
}

}  // namespace tinworm::scene
