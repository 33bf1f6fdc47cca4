// Which views a sheet shows and where they stand on the paper.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "body/plan.hpp"
#include "scene/page.hpp"
#include "scene/projection.hpp"

namespace tinworm::scene {

enum class Paper { a4, a3, letter };  // always landscape

struct PaperSize {
  double width_mm, height_mm;
};
PaperSize size_of(Paper paper);
Area frame_of(Paper paper);  // 20 mm left to file it by, 10 mm on the other sides

// Structure: the car with its skin off. Frame: a separate chassis by itself.
enum class SheetKind { structure, skin, frame };
std::string_view name_of(SheetKind kind);  // "Structure, skin off"

struct PlacedView {
  Projection projection;
  Area area;   // what the view's drawing covers
  At caption;  // baseline of its name, left
  // Of a detail: the part of the view that it shows, in body coordinates, and its name.
  std::optional<geometry::Rect> part = {};
  std::string name = {};
};

struct Sheet {
  SheetKind kind = SheetKind::structure;
  body::Layer layer = body::Layer::structure;
  int scale = 20;  // one to this
  Area frame, drawing, column, strip;
  std::vector<PlacedView> views;
};

// The zone's drawing on that sheet; null where it has none.
const body::Drawing* drawing_on(SheetKind kind, const body::Zone& zone, body::View view);

// Every line without a zone that the sheet shows in that view.
std::vector<const body::Line*> lines_on(SheetKind kind, const body::Plan& plan, body::View view);

// The sheets of one kind, at the largest of 1:20, 1:25 and 1:30 (ISO 5455 and common practice) at
// which all its views stand on one page; a body too large for that is spread over several pages
// with fewer views, at 1:50 (ISO 5455) if it must. Empty if the plan draws no zone there.
//
// Sides stand one above the other with the plan view between them, the cross views beside the
// sides they are nearest to: fore, front beside left; aft, rear beside right.
std::vector<Sheet> lay_out(SheetKind kind, const body::Plan& plan, Paper paper);

// The views one below the other from the top of `room`, cross views side by side at the end, at the
// largest of 1:40, 1:50, 1:60, 1:75 and 1:100 that its width holds; `drawing` is as high as they
// need, column and strip are empty. None if the plan draws no zone there.
std::optional<Sheet> lay_out_stacked(SheetKind kind, const body::Plan& plan, const Area& room);

// The views without captions as close as they read, for several bodies on one page: one below the
// other, cross views beside or under them, at the largest scale from 1:40 to 1:250 at which they
// stand in `room`, not larger than 1:`largest_scale`. `drawing` is as high as they need. None if
// the plan draws no zone there or the room is too small.
std::optional<Sheet> lay_out_small(SheetKind kind, const body::Plan& plan, const Area& room,
                                   int largest_scale = 0);

// The views without captions side by side in rows, sides and plan view first, at the largest scale
// of 1:40, 1:50, 1:60, 1:75 and 1:100 at which they stand in `room`; `drawing` is as high as they
// need, captions included. None if the plan draws no zone there or the room is too small.
std::optional<Sheet> lay_out_rows(SheetKind kind, const body::Plan& plan, const Area& room);

}  // namespace tinworm::scene
