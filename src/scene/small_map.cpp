#include "scene/small_map.hpp"

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

const Style key_style{7, Font::regular, black, Says::legend, 1.2};
const Style caption_style{6.5, Font::regular, soft_ink, Says::view_name, 1.2};
constexpr double key_mm = 9.6, above_key_mm = 1.6;

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

std::optional<Sheet> sheet_in(const Area& room, const body::Plan& plan) {
  for (const SheetKind kind : {SheetKind::structure, SheetKind::skin})
    if (auto sheet = lay_out_rows(kind, plan, room)) return sheet;
  return std::nullopt;
}

}  // namespace

double draw_small_map(Page& page, const weighing::Result& result, const Area& room,
                      const Measure& measure) {
  Area views = room;
  views.height_mm -= key_mm + above_key_mm;
  const std::optional<Sheet> sheet = sheet_in(views, *result.body);
  if (!sheet) return 0;
  for (const char* name :
       {"zones", "repairs", "bounds", "lines", "circles", "spots", "leaders", "words", "ranks"})
    page.layer(name);
  const DiagramOptions options;
  const weighing::Result shown = with_findings_alone(result);
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
  const Area key{room.x_mm, sheet->drawing.bottom() + above_key_mm, room.width_mm, key_mm};
  const double used = set_key_row(page.layer("words"), legend_of(drafting.used, result.constants),
                                  key_style, key, measure);
  return key.y_mm + used - room.y_mm;
}

}  // namespace tinworm::scene
