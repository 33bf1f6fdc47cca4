#include "scene/sheet.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "scene/sheet_parts.hpp"

namespace tinworm::scene {
namespace {

using body::View;
using geometry::Rect;

constexpr double strip_mm = 11.5, gap_mm = 3;
constexpr double column_least_mm = 48, column_most_mm = 64;

struct Extents {
  std::optional<Rect> wide, cross;
  double height() const {
    return std::max(wide ? wide->v.length() : 0, cross ? cross->v.length() : 0);
  }
};

struct Needs {
  double wide = 0, cross = 0, height = 0;  // on paper
  double width() const { return wide + (cross > 0 ? between_mm + cross : 0); }
};

Needs needs(const std::vector<Extents>& rows, double scale) {
  Needs all;
  for (const Extents& row : rows) {
    if (row.wide) all.wide = std::max(all.wide, row.wide->u.length() * scale);
    if (row.cross) all.cross = std::max(all.cross, row.cross->u.length() * scale);
    all.height += row.height() * scale + caption_mm + foot_mm;
  }
  return all;
}

// One page with these rows, or none if they don't fit at that scale.
std::optional<Sheet> page_of(Sheet sheet, const std::vector<Row>& rows,
                             const std::vector<Extents>& extents, int scale, bool must) {
  sheet.scale = scale;
  const Needs need = needs(extents, 1.0 / scale);
  const double width = sheet.frame.width_mm - column_least_mm - 2 * gap_mm;
  const double height = sheet.frame.height_mm - strip_mm - gap_mm;
  if (!must && (need.width() > width || need.height > height)) return std::nullopt;
  const double spare_for_column = sheet.frame.width_mm - need.width() - 2 * gap_mm;
  const double column = std::clamp(spare_for_column, column_least_mm, column_most_mm);
  const Area frame = sheet.frame;
  sheet.strip = {frame.x_mm, frame.bottom() - strip_mm, frame.width_mm, strip_mm};
  sheet.column = {frame.right() - column, frame.y_mm, column, height};
  sheet.drawing = {frame.x_mm, frame.y_mm, frame.width_mm - column - gap_mm, height};
  const double spare_x = std::max(0.0, sheet.drawing.width_mm - gap_mm - need.width());
  const double gap = std::max(0.0, height - need.height) / static_cast<double>(rows.size());
  const double left = sheet.drawing.x_mm + gap_mm / 2 + spare_x / 3;
  const double cross_left = left + need.wide + between_mm + spare_x / 3;
  double y = sheet.drawing.y_mm + gap / 2;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const double row_height = extents[i].height() / scale;
    const double bottom = y + caption_mm + row_height;
    const auto add = [&](View view, const Rect& extent, double x) {
      add_view(sheet, view, extent, {x, bottom - extent.v.length() / scale});
    };
    if (extents[i].wide) {
      const double slack = need.wide - extents[i].wide->u.length() / scale;
      add(*rows[i].wide, *extents[i].wide, left + slack / 2);
    }
    if (extents[i].cross) {
      const double slack = need.cross - extents[i].cross->u.length() / scale;
      add(*rows[i].cross, *extents[i].cross, (need.wide > 0 ? cross_left : left) + slack / 2);
    }
    y = bottom + foot_mm + gap;
  }
  return sheet;
}

// Rows by page: all on one; the sides with their cross views on one and the plan view on another;
// the sides alone on one and the plan view over both cross views on another; each by itself.
std::vector<std::vector<std::vector<Row>>> spreads(const std::vector<Row>& rows) {
  std::vector<std::vector<std::vector<Row>>> found{{rows}};
  if (rows.size() == 3) found.push_back({{rows[0], rows[2]}, {rows[1]}});
  Row cross;
  for (const Row& row : rows) {
    if (row.cross) (cross.wide ? cross.cross : cross.wide) = row.cross;
  }
  if (rows.size() == 3 && cross.wide) {
    found.push_back({{{rows[0].wide, {}}, {rows[2].wide, {}}}, {{rows[1].wide, {}}, cross}});
  }
  std::vector<std::vector<Row>> alone;
  for (const Row& row : rows) {
    if (row.wide) alone.push_back({{row.wide, {}}});
  }
  if (cross.wide) alone.push_back({cross});
  found.push_back(alone);
  return found;
}

}  // namespace

PaperSize size_of(Paper paper) {
  switch (paper) {
    case Paper::a4:
      return {297, 210};
    case Paper::a3:
      return {420, 297};
    case Paper::letter:
      return {279.4, 215.9};
  }
  return {297, 210};
}

Area frame_of(Paper paper) {
  const PaperSize size = size_of(paper);
  return {20, 10, size.width_mm - 30, size.height_mm - 20};
}

std::string_view name_of(SheetKind kind) {
  switch (kind) {
    case SheetKind::structure:
      return "Structure, skin off";
    case SheetKind::skin:
      return "Skin";
    case SheetKind::frame:
      return "Frame";
  }
  return "";
}

const body::Drawing* drawing_on(SheetKind kind, const body::Zone& zone, View view) {
  const bool is_frame = kind == SheetKind::frame;
  if (is_frame != (view == View::frame)) return nullptr;
  for (const body::Drawing& drawing : zone.drawn) {
    if (drawing.view != view) continue;
    const auto layer = kind == SheetKind::skin ? body::Layer::skin : body::Layer::structure;
    if (is_frame || drawing.layer == layer) return &drawing;
  }
  return nullptr;
}

std::vector<const body::Line*> lines_on(SheetKind kind, const body::Plan& plan, View view) {
  const auto layer = kind == SheetKind::skin ? body::Layer::skin : body::Layer::structure;
  std::vector<const body::Line*> found;
  const auto lines = plan.lines.find(view);
  if (lines == plan.lines.end()) return found;
  for (const body::Line& line : lines->second) {
    if (kind == SheetKind::frame || !line.layer || line.layer == layer) found.push_back(&line);
  }
  return found;
}

std::vector<Sheet> lay_out(SheetKind kind, const body::Plan& plan, Paper paper) {
  Sheet blank;
  blank.kind = kind;
  blank.layer = kind == SheetKind::skin ? body::Layer::skin : body::Layer::structure;
  blank.frame = frame_of(paper);
  std::vector<Row> rows;
  for (Row row : rows_of(kind)) {
    if (row.wide && !drawn(kind, plan, *row.wide)) row.wide.reset();
    if (row.cross && !drawn(kind, plan, *row.cross)) row.cross.reset();
    if (row.wide || row.cross) rows.push_back(row);
  }
  if (rows.empty()) return {};
  const auto spread_at = [&](const std::vector<std::vector<Row>>& pages, int scale,
                             bool must) -> std::vector<Sheet> {
    std::vector<Sheet> sheets;
    for (const std::vector<Row>& page : pages) {
      std::vector<Extents> extents;
      for (const Row& row : page) {
        extents.push_back({row.wide ? drawn(kind, plan, *row.wide) : std::nullopt,
                           row.cross ? drawn(kind, plan, *row.cross) : std::nullopt});
      }
      const auto sheet = page_of(blank, page, extents, scale, must);
      if (!sheet) return {};
      sheets.push_back(*sheet);
    }
    return sheets;
  };
  const auto choices = spreads(rows);
  for (const auto& pages : choices) {
    for (const int scale : {20, 25, 30}) {
      const std::vector<Sheet> sheets = spread_at(pages, scale, false);
      if (!sheets.empty()) return sheets;
    }
  }
  return spread_at(choices.back(), 50, true);
}

}  // namespace tinworm::scene
