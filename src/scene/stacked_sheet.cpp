// Arrangements for narrow room: views one below the other.
#include <algorithm>
#include <optional>

#include "scene/sheet.hpp"
#include "scene/sheet_parts.hpp"

namespace tinworm::scene {
namespace {

Sheet blank_sheet(SheetKind kind) {
  Sheet sheet;
  sheet.kind = kind;
  sheet.layer = kind == SheetKind::skin ? body::Layer::skin : body::Layer::structure;
  return sheet;
}

constexpr double small_gap_mm = 2.2;

// Needs of the views without captions: the cross views in a column beside the others, or in a row
// under them.
struct SmallNeeds {
  double wide_mm = 0, wide_height_mm = 0;
  double cross_mm = 0, cross_height_mm = 0;
  double width_mm = 0, height_mm = 0;
};

SmallNeeds small_needs(const ViewExtents& views, int scale, bool beside) {
  SmallNeeds need;
  const auto gap = [](double before) { return before > 0 ? small_gap_mm : 0; };
  for (const ViewExtent& each : views.wide) {
    need.wide_mm = std::max(need.wide_mm, each.width(scale));
    need.wide_height_mm += gap(need.wide_height_mm) + each.height(scale);
  }
  for (const ViewExtent& each : views.cross) {
    double &along = beside ? need.cross_height_mm : need.cross_mm,
           &across = beside ? need.cross_mm : need.cross_height_mm;
    along += gap(along) + (beside ? each.height(scale) : each.width(scale));
    across = std::max(across, beside ? each.width(scale) : each.height(scale));
  }
  const double between = need.wide_mm > 0 && need.cross_mm > 0 ? small_gap_mm : 0;
  need.width_mm =
      beside ? need.wide_mm + between + need.cross_mm : std::max(need.wide_mm, need.cross_mm);
  need.height_mm = beside ? std::max(need.wide_height_mm, need.cross_height_mm)
                          : need.wide_height_mm + between + need.cross_height_mm;
  return need;
}

void place_small(Sheet& sheet, const ViewExtents& views, const SmallNeeds& need, bool beside) {
  const double left = sheet.drawing.x_mm + (sheet.drawing.width_mm - need.width_mm) / 2;
  double y = sheet.drawing.y_mm;
  for (const ViewExtent& each : views.wide) {
    add_view(sheet, each.view, each.extent,
             {left + (need.wide_mm - each.width(sheet.scale)) / 2, y});
    y += each.height(sheet.scale) + small_gap_mm;
  }
  // Front beside the left side, rear beside the right, as on a whole sheet.
  const double right = left + need.width_mm - need.cross_mm;
  const double spare = need.wide_height_mm - need.cross_height_mm;
  const double apart = small_gap_mm + (beside && views.cross.size() > 1 ? std::max(0.0, spare) : 0);
  double x = beside ? right : left + (need.width_mm - need.cross_mm) / 2;
  if (beside) y = sheet.drawing.y_mm;
  for (const ViewExtent& each : views.cross) {
    const double lower = beside ? 0 : need.cross_height_mm - each.height(sheet.scale);
    add_view(sheet, each.view, each.extent, {x, y + lower});
    (beside ? y : x) +=
        (beside ? each.height(sheet.scale) + apart : each.width(sheet.scale) + small_gap_mm);
  }
}

}  // namespace

std::optional<Sheet> lay_out_stacked(SheetKind kind, const body::Plan& plan, const Area& room) {
  const auto [wide, cross] = view_extents(kind, plan);
  if (wide.empty() && cross.empty()) return std::nullopt;
  double wide_mm = 0, cross_mm = 0, cross_height_mm = 0;  // of the body
  for (const ViewExtent& each : wide) wide_mm = std::max(wide_mm, each.extent.u.length());
  for (const ViewExtent& each : cross) {
    cross_mm += each.extent.u.length();
    cross_height_mm = std::max(cross_height_mm, each.extent.v.length());
  }
  Sheet sheet = blank_sheet(kind);
  constexpr double edge_mm = 0.5;
  for (const int scale : {40, 50, 60, 75, 100}) {
    sheet.scale = scale;
    const double need = std::max(wide_mm / scale, cross_mm / scale + between_mm);
    if (need + 2 * edge_mm <= room.width_mm) break;
  }
  double y = room.y_mm;
  for (const ViewExtent& each : wide) {
    const double slack = room.width_mm - each.extent.u.length() / sheet.scale;
    y += caption_mm;
    add_view(sheet, each.view, each.extent, {room.x_mm + slack / 2, y});
    y += each.extent.v.length() / sheet.scale + foot_mm;
  }
  if (!cross.empty()) y += caption_mm;
  const double gaps = static_cast<double>(cross.size()) + 1;
  const double gap = (room.width_mm - cross_mm / sheet.scale) / gaps;
  double x = room.x_mm + gap;
  for (const ViewExtent& each : cross) {
    const double down = (cross_height_mm - each.extent.v.length()) / sheet.scale;
    add_view(sheet, each.view, each.extent, {x, y + down});
    x += each.extent.u.length() / sheet.scale + gap;
  }
  if (!cross.empty()) y += cross_height_mm / sheet.scale + foot_mm + 1;
  sheet.drawing = {room.x_mm, room.y_mm, room.width_mm, y - room.y_mm};
  return sheet;
}

std::optional<Sheet> lay_out_small(SheetKind kind, const body::Plan& plan, const Area& room,
                                   int largest_scale) {
  const ViewExtents views = view_extents(kind, plan);
  if (views.empty()) return std::nullopt;
  Sheet sheet = blank_sheet(kind);
  for (const int scale : {40, 50, 60, 75, 100, 125, 150, 200, 250}) {
    if (scale < largest_scale) continue;
    sheet.scale = scale;
    for (const bool beside : {true, false}) {
      const SmallNeeds need = small_needs(views, scale, beside);
      if (need.width_mm > room.width_mm || need.height_mm > room.height_mm) continue;
      sheet.drawing = {room.x_mm, room.y_mm, room.width_mm, need.height_mm};
      place_small(sheet, views, need, beside);
      return sheet;
    }
  }
  return std::nullopt;
}

}  // namespace tinworm::scene
