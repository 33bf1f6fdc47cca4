#include "scene/body_view.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/area.hpp"
#include "scene/details.hpp"
#include "scene/ground.hpp"
#include "scene/palette.hpp"
#include "scene/repair_edge.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

using body::View;

Stroke stroke_of(body::Weight weight) {
  switch (weight) {
    case body::Weight::strong:
      return {ink, 1.3, {}};
    case body::Weight::medium:
      return {soft_ink, 0.6, {}};
    case body::Weight::light:
      return {soft_ink, 0.35, {}};
    case body::Weight::ghost:
      // Adjacent outlines: long-dashed double-dotted narrow line (ISO 128, type 05.1).
      return {faint_ink, 0.4, {4.2, 0.6, 0.15, 0.6, 0.15, 0.6}};
  }
  return {ink, 0.5, {}};
}

Stroke bound_of(body::Role role) {
  switch (role) {
    case body::Role::main:
      return {ink, 0.85, {}};
    case body::Role::local:
      return {ink, 0.5, {}};
    case body::Role::skin:
      return {soft_ink, 0.3, {}};
  }
  return {ink, 0.5, {}};
}

Stroke thinned(Stroke stroke, double share) {
  stroke.width_pt *= share;
  for (double& each : stroke.dash_mm) each *= share;
  return stroke;
}

// What lies in the part that a detail shows.
geometry::Outline shown_of(const geometry::Outline& outline, const PlacedView& placed) {
  if (!placed.part) return outline;
  const auto& [u, v] = *placed.part;
  const geometry::Outline part{
      {{{u.low, v.low}, {u.high, v.low}, {u.high, v.high}, {u.low, v.high}}}, {}};
  return geometry::intersection(outline, part);
}

void add_zones(Drafting& drafting, std::size_t view) {
  const PlacedView& placed = drafting.sheet.views[view];
  for (const body::Zone& plan : drafting.result.body->zones) {
    const body::Drawing* drawing = drawing_on(drafting.sheet.kind, plan, placed.projection.view);
    const weighing::Zone* zone = drafting.result.zone(plan.number);
    if (drawing == nullptr || zone == nullptr) continue;
    const geometry::Outline outline = shown_of(drawing->outline, placed);
    DrawnZone drawn{&plan, zone, view, on_paper(outline, placed.projection), {}, 0};
    if (outline.rings.empty()) continue;
    const auto circle = geometry::inscribed_circle(outline, 0.3 / placed.projection.scale);
    drawn.centre = placed.projection.paper(circle.centre);
    drawn.room_mm = circle.radius * placed.projection.scale;
    drafting.zones.push_back(std::move(drawn));
  }
}

void draw_lines(Drafting& drafting, const PlacedView& placed) {
  auto& items = drafting.page.layer("lines").items;
  for (const body::Line* line :
       lines_on(drafting.sheet.kind, *drafting.result.body, placed.projection.view)) {
    for (const geometry::Outline& outline : line->shapes) {
      Shape shape{on_paper(outline, placed.projection),
                  {},
                  thinned(stroke_of(line->weight), drafting.dress.strokes)};
      if (line->filled_with_paper) {
        shape.fill = paper;
        drafting.covers.push_back({shape.lines, bounds(shape.lines)});
      }
      if (placed.part) {
        items.push_back(Clipped{{polyline(placed.area)}, {std::move(shape)}});
        continue;
      }
      drafting.space.trace(shape.lines);
      items.push_back(std::move(shape));
    }
  }
  if (placed.part) {
    items.push_back(Shape{{polyline(placed.area)}, {}, Stroke{soft_ink, 0.35, {}}});
    drafting.space.trace({polyline(placed.area)});
  }
}

// Reference arrow after ISO 128-3: a filled head of 30 degrees on a thick line.
void draw_arrow(Layer& layer, At tip, double direction) {
  constexpr double length_mm = 7, head_mm = 2.4, half_mm = 0.65;
  layer.items.push_back(Shape{{segment({tip.x_mm - direction * head_mm, tip.y_mm},
                                       {tip.x_mm - direction * length_mm, tip.y_mm})},
                              {},
                              Stroke{ink, 0.9, {}}});
  layer.items.push_back(Shape{{Polyline{{tip,
                                         {tip.x_mm - direction * head_mm, tip.y_mm - half_mm},
                                         {tip.x_mm - direction * head_mm, tip.y_mm + half_mm}},
                                        true}},
                              ink,
                              {}});
}

void put(Drafting& drafting, const Text& text) {
  drafting.space.write(text.area.grown(0.4));
  drafting.page.layer("words").items.push_back(text);
}

void name_view(Drafting& drafting, const PlacedView& placed) {
  const View view = placed.projection.view;
  const bool along = view != View::front && view != View::rear;
  const Style name{8.5, Font::bold, ink, Says::view_name},
      note{6.5, Font::regular, soft_ink, Says::view_name};
  double x = placed.caption.x_mm;
  const double y = placed.caption.y_mm;
  if (!placed.name.empty()) {
    const double width = std::max(placed.area.width_mm, detail_caption_mm);
    const auto lines = wrap(placed.name, name, width, drafting.measure);
    double baseline = y - line_height_mm(name) * (static_cast<double>(lines.size()) - 1);
    for (const std::string& line : lines) {
      put(drafting, set(line, name, {x, baseline}, Align::left, drafting.measure));
      baseline += line_height_mm(name);
    }
    return;
  }
  if (along) {
    // The arrow points to the nose, which is at the left except in the right view.
    const bool to_right = view == View::right;
    const Text word = set("front", note, {to_right ? placed.area.right() - 9 : x + 9, y},
                          to_right ? Align::right : Align::left, drafting.measure);
    put(drafting, word);
    draw_arrow(drafting.page.layer("words"), {to_right ? placed.area.right() : x, y - 0.8},
               to_right ? 1 : -1);
    drafting.space.write({to_right ? placed.area.right() - 8 : x, y - 2, 8, 2.4});
    if (!to_right) x = word.area.right() + 6;
  }
  const Text title = set(view_name(view), name, {x, y}, Align::left, drafting.measure);
  put(drafting, title);
  const std::string_view more = view_note(view);
  if (more.empty()) return;
  Text beside = set(more, note, {title.area.right() + 2, y}, Align::left, drafting.measure);
  // On a narrow page it stands under the view, and leaves the end to the car's side.
  constexpr double side_mm = 16;
  if (beside.area.right() > drafting.sheet.drawing.right() ||
      (along && beside.area.right() > placed.area.right() - side_mm))
    beside = set(more, note, {placed.area.x_mm, placed.area.bottom() + 3}, Align::left,
                 drafting.measure);
  put(drafting, beside);
}

// The car's left and right at both edges of the views that show both: side by side under end
// views, over and under the others at the end that the view's name leaves free.
void name_sides(Drafting& drafting, const PlacedView& placed) {
  const View view = placed.projection.view;
  if (view == View::left || view == View::right || placed.part) return;
  const Style note{6.5, Font::regular, soft_ink, Says::view_name};
  const std::string left = "car\u2019s left", right = "car\u2019s right";
  const Area& area = placed.area;
  if (view == View::front || view == View::rear) {
    const double y = area.bottom() + 3;
    const bool front = view == View::front;
    put(drafting, set(front ? right : left, note, {area.x_mm, y}, Align::left, drafting.measure));
    put(drafting,
        set(front ? left : right, note, {area.right(), y}, Align::right, drafting.measure));
    return;
  }
  const bool left_on_top = sign_of_v(view) > 0;
  put(drafting, set(left_on_top ? left : right, note, {area.right(), area.y_mm - 0.9}, Align::right,
                    drafting.measure));
  put(drafting, set(left_on_top ? right : left, note, {area.right(), area.bottom() + 2.9},
                    Align::right, drafting.measure));
}

}  // namespace

void draw_body(Drafting& drafting) {
  for (std::size_t view = 0; view < drafting.sheet.views.size(); ++view) {
    add_zones(drafting, view);
  }
  for (const DrawnZone& drawn : drafting.zones) {
    draw_ground(drafting, drawn);
    drafting.space.cover(drawn.shape);
  }
  for (const DrawnZone& drawn : drafting.zones) {
    drafting.used.roles.insert(drawn.plan->role);
    drafting.page.layer("bounds").items.push_back(
        Shape{drawn.shape, {}, thinned(bound_of(drawn.plan->role), drafting.dress.strokes)});
    if (!drafting.dress.zone) draw_repair_edge(drafting, drawn);
  }
  for (const PlacedView& placed : drafting.sheet.views) draw_lines(drafting, placed);
}

void draw_view_names(Drafting& drafting) {
  for (const PlacedView& placed : drafting.sheet.views) {
    name_view(drafting, placed);
    name_sides(drafting, placed);
  }
}

void draw_circles(Drafting& drafting) {
  if (!drafting.options.circles) return;
  auto& items = drafting.page.layer("circles").items;
  for (const PlacedView& placed : drafting.sheet.views) {
    const Projection& projection = placed.projection;
    for (const body::Mount& mount : drafting.result.body->mounts) {
      if (!body::under_near_rule(mount.carries)) continue;
      const bool other_side = (projection.view == View::left && mount.at.y_mm > 0) ||
                              (projection.view == View::right && mount.at.y_mm < 0);
      // Only where the view shows what the mount stands on: else a cross view fills with circles.
      const bool shown =
          std::any_of(drafting.zones.begin(), drafting.zones.end(), [&](const DrawnZone& drawn) {
            return &drafting.sheet.views[drawn.view] == &placed &&
                   std::count(mount.on.begin(), mount.on.end(), drawn.plan->number) > 0;
          });
      if (other_side || !shown) continue;
      const At at = projection.project(mount.at);
      const double radius = drafting.result.constants.near_radius_mm * projection.scale;
      items.push_back(Clipped{{polyline(placed.area.grown(3))},
                              {Shape{{circle(at, radius)}, {}, Stroke{repair_ink, 0.4, {1.6, 1.1}}},
                               Shape{{segment({at.x_mm - 0.8, at.y_mm}, {at.x_mm + 0.8, at.y_mm}),
                                      segment({at.x_mm, at.y_mm - 0.8}, {at.x_mm, at.y_mm + 0.8})},
                                     {},
                                     Stroke{repair_ink, 0.4, {}}}}});
      drafting.used.circles = true;
    }
  }
}

}  // namespace tinworm::scene
