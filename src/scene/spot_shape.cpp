#include "scene/spot_shape.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/area.hpp"
#include "scene/palette.hpp"
#include "scene/texture.hpp"

namespace tinworm::scene {
namespace {

geometry::Ring ring_of(const Polyline& line) {
  geometry::Ring ring;
  for (const At at : line.points) ring.push_back({at.x_mm, at.y_mm});
  return ring;
}

std::vector<Polyline> lines_of(const geometry::Outline& outline) {
  std::vector<Polyline> lines;
  for (const geometry::Ring& ring : outline.rings) {
    Polyline line{{}, true};
    for (const geometry::Point point : ring) line.points.push_back({point.u, point.v});
    lines.push_back(std::move(line));
  }
  return lines;
}

Polyline moved(Polyline line, At by) {
  for (At& at : line.points) at = {at.x_mm + by.x_mm, at.y_mm + by.y_mm};
  return line;
}

Stroke edge_of(bool measured) {
  return measured ? Stroke{ink, 0.6, {}} : Stroke{ink, 0.6, {0.7, 0.6}};
}

}  // namespace

Polyline patch(At at, double width_mm, double height_mm) {
  constexpr int corners = 48;
  Polyline line{{}, true};
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * std::numbers::pi * i / corners;
    const auto reach = [](double share) {
      return std::copysign(std::pow(std::abs(share), 0.6), share);
    };
    line.points.push_back({at.x_mm + width_mm / 2 * reach(std::cos(angle)),
                           at.y_mm + height_mm / 2 * reach(std::sin(angle))});
  }
  return line;
}

Polyline symbol(At middle) {
  constexpr double half_mm = 1.15, height_mm = 2.0;
  const double top = middle.y_mm - height_mm / 2;
  return {
      {{middle.x_mm - half_mm, top}, {middle.x_mm + half_mm, top}, {middle.x_mm, top + height_mm}},
      true};
}

Polyline open_mark(At middle) {
  return circle(middle, 1.2);
}

geometry::Outline outline_of(const DrawnZone& drawn) {
  geometry::Outline zone;
  for (const Polyline& line : drawn.shape) {
    if (line.closed) zone.rings.push_back(ring_of(line));
  }
  return zone;
}

std::vector<Polyline> cut_to_zone(const Polyline& whole, const DrawnZone& drawn) {
  constexpr double small_mm = 3, least_share = 0.6;
  const Area area = bounds({whole});
  if (std::max(area.width_mm, area.height_mm) <= small_mm) return {whole};
  const geometry::Outline zone = outline_of(drawn);
  // At a zone's end half of a spot may lie beyond it: it slides back by no more than that half, as
  // what was found is neither cut away nor drawn in the air.
  for (const double share : {0.0, 0.25, 0.5}) {
    std::vector<Polyline> best;
    double most = least_share * geometry::area({{ring_of(whole)}, {}});
    for (const At by : {At{-1, 0}, At{1, 0}, At{0, -1}, At{0, 1}}) {
      const Polyline slid =
          moved(whole, {by.x_mm * share * area.width_mm, by.y_mm * share * area.height_mm});
      const geometry::Outline left = geometry::intersection({{ring_of(slid)}, {}}, zone);
      const double kept = geometry::area(left);
      if (kept <= most) continue;
      most = kept;
      best = lines_of(left);
    }
    if (!best.empty()) return best;
  }
  return {whole};
}

double middle_inside(const std::vector<Polyline>& shape, double fixed, bool fixed_is_x,
                     double otherwise) {
  constexpr int tries = 200;
  const Area area = bounds(shape);
  const double from = fixed_is_x ? area.y_mm : area.x_mm;
  const double length = fixed_is_x ? area.height_mm : area.width_mm;
  int best_start = 0, best = 0, run = 0;
  for (int i = 0; i <= tries; ++i) {
    const double each = from + length * i / tries;
    run = inside(shape, fixed_is_x ? At{fixed, each} : At{each, fixed}) ? run + 1 : 0;
    if (run > best) {
      best = run;
      best_start = i - run + 1;
    }
  }
  return best == 0 ? otherwise : from + length * (best_start + (best - 1) / 2.0) / tries;
}

std::vector<Item> inked(MarkKind kind, weighing::Step step, bool measured,
                        const std::vector<Polyline>& shape) {
  const Shape halo{shape, {}, Stroke{paper, kind == MarkKind::open ? 3.4 : 1.8, {}}};
  if (kind == MarkKind::open) {
    return {halo, Shape{shape, {}, Stroke{ink, 2.2, {}}},
            Shape{shape, {}, Stroke{strong(step), 1.2, {}}}};
  }
  const Item fill = kind == MarkKind::symbol
                        ? Item{Clipped{shape, {Shape{shape, strong(step), {}}}}}
                        : strong_fill(step, shape);
  return {halo, fill, Shape{shape, {}, edge_of(measured)}};
}

std::vector<Item> station_cross(At at) {
  constexpr double half_mm = 0.7;
  const std::vector<Polyline> cross{
      segment({at.x_mm - half_mm, at.y_mm - half_mm}, {at.x_mm + half_mm, at.y_mm + half_mm}),
      segment({at.x_mm - half_mm, at.y_mm + half_mm}, {at.x_mm + half_mm, at.y_mm - half_mm})};
  return {Shape{cross, {}, Stroke{paper, 1.6, {}}}, Shape{cross, {}, Stroke{ink, 0.6, {}}}};
}

}  // namespace tinworm::scene
