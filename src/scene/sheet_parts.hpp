// What every arrangement of views is made of.
#pragma once

#include <optional>
#include <vector>

#include "geometry/area.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

constexpr double between_mm = 9;                   // a side and the cross view beside it
constexpr double caption_mm = 5.5, foot_mm = 3.2;  // above and below each view

struct Row {  // of a sheet
  std::optional<body::View> wide, cross;
};
std::vector<Row> rows_of(SheetKind kind);

// Everything that is drawn in a view, in body coordinates; none where no zone is.
std::optional<geometry::Rect> drawn(SheetKind kind, const body::Plan& plan, body::View view);

// At the sheet's scale, its caption over it.
void add_view(Sheet& sheet, body::View view, const geometry::Rect& extent, At top_left);

struct ViewExtent {
  body::View view;
  geometry::Rect extent;
  double width(int scale) const { return extent.u.length() / scale; }
  double height(int scale) const { return extent.v.length() / scale; }
};
struct ViewExtents {  // the views of a sheet that have zones
  std::vector<ViewExtent> wide, cross;
  bool empty() const { return wide.empty() && cross.empty(); }
};
ViewExtents view_extents(SheetKind kind, const body::Plan& plan);

}  // namespace tinworm::scene
