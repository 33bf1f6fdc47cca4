#include "documents/leg_picture.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "documents/typography.hpp"
#include "geometry/area.hpp"
#include "scene/projection.hpp"

namespace tinworm::documents {
namespace {

using body::Layer;
using body::View;

constexpr double most_wide_mm = 130, most_high_mm = 46, around_mm = 2;
constexpr scene::Colour shade{0.80, 0.80, 0.80};
constexpr Style number_style{6.5, Font::regular, black, Says::zone_number, 1.2};

struct Seen {
  Layer layer = Layer::skin;
  View view = View::left;
};

bool in(const body::Leg& leg, const body::Zone& zone) {
  return std::ranges::find(leg.zones, zone.number) != leg.zones.end();
}

std::optional<Seen> best_view(const body::Plan& plan, const body::Leg& leg) {
  std::optional<Seen> best;
  std::size_t most = 0;
  for (const Layer layer : {Layer::skin, Layer::structure}) {
    for (const View view : {View::left, View::right, View::front, View::rear, View::top,
                            View::underneath, View::frame}) {
      const auto shown =
          static_cast<std::size_t>(std::ranges::count_if(plan.zones, [&](const body::Zone& zone) {
            return in(leg, zone) && zone.drawing(layer, view) != nullptr;
          }));
      if (shown <= most) continue;
      most = shown;
      best = Seen{layer, view};
    }
  }
  return best;
}

struct Drawn {
  const body::Zone* zone;
  const body::Drawing* drawing;
};

std::vector<Drawn> drawn_in(const body::Plan& plan, const Seen& seen) {
  std::vector<Drawn> drawn;
  for (const body::Zone& zone : plan.zones) {
    const body::Drawing* drawing = zone.drawing(seen.layer, seen.view);
    if (drawing != nullptr && !drawing->outline.rings.empty()) drawn.push_back({&zone, drawing});
  }
  return drawn;
}

// At the scale at which the whole body fits, its top left corner at the origin.
scene::Projection projection_of(const std::vector<Drawn>& drawn, View view, scene::Area& covered) {
  scene::Projection projection{view, 1, {}};
  std::vector<scene::Polyline> all;
  for (const Drawn& each : drawn)
    for (scene::Polyline& ring : scene::on_paper(each.drawing->outline, projection))
      all.push_back(std::move(ring));
  const scene::Area whole = scene::bounds(all);
  projection.scale = std::min(most_wide_mm / whole.width_mm, most_high_mm / whole.height_mm);
  projection.origin = {-whole.x_mm * projection.scale, -whole.y_mm * projection.scale};
  covered = {0, 0, whole.width_mm * projection.scale, whole.height_mm * projection.scale};
  return projection;
}

void draw_outlines(scene::Layer& layer, const std::vector<Drawn>& drawn, const body::Leg& leg,
                   const scene::Projection& projection) {
  for (const bool of_leg : {false, true})  // the leg's on top
    for (const Drawn& each : drawn) {
      if (in(leg, *each.zone) != of_leg) continue;
      const scene::Stroke stroke =
          of_leg ? scene::Stroke{scene::ink, 0.6, {}} : scene::Stroke{scene::faint_ink, 0.3, {}};
      layer.items.push_back(scene::Shape{scene::on_paper(each.drawing->outline, projection),
                                         of_leg ? std::optional(shade) : std::nullopt, stroke});
    }
}

// Where a number has room; the entries below name them all.
void draw_numbers(scene::Layer& layer, const std::vector<Drawn>& drawn, const body::Leg& leg,
                  const scene::Projection& projection, const scene::Measure& measure) {
  std::vector<scene::Area> taken;
  for (const Drawn& each : drawn) {
    if (!in(leg, *each.zone)) continue;
    const auto circle = geometry::inscribed_circle(each.drawing->outline, 0.3 / projection.scale);
    const scene::At centre = projection.paper(circle.centre);
    const double room = circle.radius * projection.scale;
    scene::Text text = scene::set(fmt::format("{}", each.zone->number), number_style,
                                  {centre.x_mm, centre.y_mm + 0.8}, scene::Align::centre, measure);
    if (room < 1.4 || std::ranges::any_of(taken, [&](const scene::Area& other) {
          return other.overlaps(text.area);
        }))
      continue;
    taken.push_back(text.area);
    layer.items.push_back(std::move(text));
  }
}

std::string caption(const Seen& seen) {
  const std::string_view note = scene::view_note(seen.view);
  return fmt::format("{}{}{}", scene::view_name(seen.view), note.empty() ? "" : ", ", note);
}

}  // namespace

void write_leg_picture(Flow& flow, const body::Plan& plan, const body::Leg& leg) {
  const auto seen = best_view(plan, leg);
  if (!seen) return;
  const std::vector<Drawn> drawn = drawn_in(plan, *seen);
  scene::Area covered;
  const scene::Projection at_origin = projection_of(drawn, seen->view, covered);
  const double caption_mm = scene::line_height_mm(text_style);
  flow.block(covered.height_mm + 2 * around_mm + caption_mm,
             [&](scene::Page& page, const scene::Area& area) {
               scene::Layer& layer = page.layer("text");
               scene::Projection projection = at_origin;
               projection.origin.x_mm += area.x_mm + (area.width_mm - covered.width_mm) / 2;
               projection.origin.y_mm += area.y_mm + around_mm;
               draw_outlines(layer, drawn, leg, projection);
               draw_numbers(layer, drawn, leg, projection, flow.measure());
               layer.items.push_back(
                   scene::set(caption(*seen), text_style,
                              {area.x_mm + area.width_mm / 2, area.bottom() - caption_mm * 0.3},
                              scene::Align::centre, flow.measure()));
             });
}

}  // namespace tinworm::documents
