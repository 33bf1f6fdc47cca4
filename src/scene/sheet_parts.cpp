#include "scene/sheet_parts.hpp"

#include <algorithm>

namespace tinworm::scene {

using body::View;
using geometry::Rect;

namespace {

Projection place(View view, const Rect& extent, double scale, At top_left) {
  Projection projection{view, scale, {}};
  const double u = sign_of_u(view) > 0 ? extent.u.low : extent.u.high;
  const double v = sign_of_v(view) > 0 ? extent.v.low : extent.v.high;
  const At corner = projection.paper({u, v});
  projection.origin = {top_left.x_mm - corner.x_mm, top_left.y_mm - corner.y_mm};
  return projection;
}

}  // namespace

std::vector<Row> rows_of(SheetKind kind) {
  switch (kind) {
    case SheetKind::structure:
      return {{View::left, View::front}, {View::underneath, {}}, {View::right, View::rear}};
    case SheetKind::skin:
      return {{View::left, View::front}, {View::top, {}}, {View::right, View::rear}};
    case SheetKind::frame:
      return {{View::frame, {}}};
  }
  return {};
}

// Everything that is drawn in a view, in body coordinates.
std::optional<Rect> drawn(SheetKind kind, const body::Plan& plan, View view) {
  std::optional<Rect> hull;
  const auto add = [&](const geometry::Outline& outline) {
    if (outline.rings.empty() && outline.open.empty()) return;
    const Rect rect = geometry::bounds(outline);
    if (!hull) hull = rect;
    hull->u = {std::min(hull->u.low, rect.u.low), std::max(hull->u.high, rect.u.high)};
    hull->v = {std::min(hull->v.low, rect.v.low), std::max(hull->v.high, rect.v.high)};
  };
  for (const body::Zone& zone : plan.zones) {
    if (const body::Drawing* drawing = drawing_on(kind, zone, view)) add(drawing->outline);
  }
  if (!hull) return hull;  // lines alone are no view of this sheet
  for (const body::Line* line : lines_on(kind, plan, view)) {
    for (const geometry::Outline& shape : line->shapes) add(shape);
  }
  return hull;
}

void add_view(Sheet& sheet, View view, const Rect& extent, At top_left) {
  const double scale = 1.0 / sheet.scale;
  const Area area{top_left.x_mm, top_left.y_mm, extent.u.length() * scale,
                  extent.v.length() * scale};
  sheet.views.push_back({place(view, extent, scale, top_left),
                         area,
                         {top_left.x_mm, top_left.y_mm - caption_mm + 3.2}});
}

ViewExtents view_extents(SheetKind kind, const body::Plan& plan) {
  ViewExtents found;
  for (const Row& row : rows_of(kind)) {
    if (row.wide)
      if (const auto extent = drawn(kind, plan, *row.wide))
        found.wide.push_back({*row.wide, *extent});
    if (row.cross)
      if (const auto extent = drawn(kind, plan, *row.cross))
        found.cross.push_back({*row.cross, *extent});
  }
  return found;
}

}  // namespace tinworm::scene
