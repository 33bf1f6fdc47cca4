// Views side by side in rows, for room that is wider than it is high.
#include <algorithm>
#include <vector>

#include "scene/sheet.hpp"
#include "scene/sheet_parts.hpp"

namespace tinworm::scene {
namespace {

// Between rows and under the last there is room for captions, which would run into one another at
// smaller scales than 1:100.
constexpr double gap_mm = 6, row_gap_mm = 5;

struct ViewRow {
  std::vector<ViewExtent> views;
  double width_mm = 0, height_mm = 0;
};

std::vector<ViewRow> rows_at(int scale, const std::vector<ViewExtent>& views, double width_mm) {
  std::vector<ViewRow> rows;
  for (const ViewExtent& view : views) {
    const bool fits =
        !rows.empty() && rows.back().width_mm + gap_mm + view.width(scale) <= width_mm;
    if (!fits) rows.emplace_back();
    ViewRow& row = rows.back();
    row.width_mm += (row.views.empty() ? 0 : gap_mm) + view.width(scale);
    row.height_mm = std::max(row.height_mm, view.height(scale));
    row.views.push_back(view);
  }
  return rows;
}

double widest_mm(const std::vector<ViewRow>& rows) {
  return std::ranges::max_element(rows, {}, &ViewRow::width_mm)->width_mm;
}

double height_mm(const std::vector<ViewRow>& rows) {
  double height = row_gap_mm * static_cast<double>(rows.size() - 1);
  for (const ViewRow& row : rows) height += row.height_mm;
  return height;
}

// Wheels of one row on one ground.
void place(Sheet& sheet, const std::vector<ViewRow>& rows) {
  double y = sheet.drawing.y_mm;
  for (const ViewRow& row : rows) {
    double x = sheet.drawing.x_mm + (sheet.drawing.width_mm - row.width_mm) / 2;
    for (const ViewExtent& each : row.views) {
      add_view(sheet, each.view, each.extent, {x, y + row.height_mm - each.height(sheet.scale)});
      x += each.width(sheet.scale) + gap_mm;
    }
    y += row.height_mm + row_gap_mm;
  }
}

}  // namespace

std::optional<Sheet> lay_out_rows(SheetKind kind, const body::Plan& plan, const Area& room) {
  ViewExtents extents = view_extents(kind, plan);
  if (extents.empty()) return std::nullopt;
  std::vector<ViewExtent> views = extents.wide;
  views.insert(views.end(), extents.cross.begin(), extents.cross.end());
  Sheet sheet;
  sheet.kind = kind;
  sheet.layer = kind == SheetKind::skin ? body::Layer::skin : body::Layer::structure;
  for (const int scale : {40, 50, 60, 75, 100}) {
    const std::vector<ViewRow> rows = rows_at(scale, views, room.width_mm);
    if (widest_mm(rows) > room.width_mm || height_mm(rows) + row_gap_mm > room.height_mm) continue;
    sheet.scale = scale;
    sheet.drawing = {room.x_mm, room.y_mm, room.width_mm, height_mm(rows) + row_gap_mm};
    place(sheet, rows);
    return sheet;
  }
  return std::nullopt;
}

}  // namespace tinworm::scene
