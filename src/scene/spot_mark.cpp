#include "scene/spot_mark.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <optional>

#include "geometry/area.hpp"
#include "scene/palette.hpp"
#include "scene/texture.hpp"
#include "weighing/nearness.hpp"

namespace tinworm::scene {
namespace {

using body::Axis;
using body::View;
using weighing::coordinate;
using weighing::extent;

constexpr double least_mm = 2;

// How far the spot reaches along an axis of the body.
double length_along(const weighing::Spot& spot, const body::Zone& zone, Axis axis) {
  if (!spot.size) return 0;
  if (axis == zone.runs) return spot.size->along_mm;
  const auto other = [&](Axis skipped) {
    for (const Axis each : {Axis::along, Axis::across, Axis::up}) {
      if (each != zone.runs && each != skipped) return each;
    }
    return axis;
  };
  const Axis rival = other(axis);
  const bool wider = extent(zone.extent, axis).length() >= extent(zone.extent, rival).length();
  return wider ? spot.size->across_mm : 0;
}

// The middle of the longest stretch inside the shape on the line x = `x` (or y = `y`).
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

geometry::Ring ring_of(const Polyline& line) {
  geometry::Ring ring;
  for (const At at : line.points) ring.push_back({at.x_mm, at.y_mm});
  return ring;
}

// A soft-cornered patch: a superellipse, which reads as a spot and still fills its rectangle.
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

geometry::Outline outline_of(const DrawnZone& drawn) {
  geometry::Outline zone;
  for (const Polyline& line : drawn.shape) {
    if (line.closed) zone.rings.push_back(ring_of(line));
  }
  return zone;
}

// A wide spot stops at its zone's bounds; a small one is shown whole.
std::vector<Polyline> cut_to_zone(const Polyline& patch, const DrawnZone& drawn) {
  const Area area = bounds({patch});
  if (area.width_mm <= 3 || area.height_mm <= 3) return {patch};
  const geometry::Outline spot{{ring_of(patch)}, {}}, zone = outline_of(drawn);
  std::vector<Polyline> cut;
  for (const geometry::Ring& ring : geometry::intersection(spot, zone).rings) {
    Polyline line{{}, true};
    for (const geometry::Point point : ring) line.points.push_back({point.u, point.v});
    cut.push_back(std::move(line));
  }
  const bool too_little =
      cut.empty() || bounds(cut).width_mm < least_mm || bounds(cut).height_mm < least_mm;
  return too_little ? std::vector<Polyline>{patch} : cut;
}

SpotMark mark_of(const Drafting& drafting, const weighing::Spot& spot, const DrawnZone& drawn,
                 int unplaced_before) {
  const Projection& projection = drafting.sheet.views[drawn.view].projection;
  const Axis u_axis = body::first_axis(projection.view);
  const Axis v_axis = body::second_axis(projection.view);
  const auto u = coordinate(spot.at, u_axis), v = coordinate(spot.at, v_axis);
  At at = projection.paper({u.value_or(0), v.value_or(0)});
  if (!u && !v) {
    // Beside the zone's number, several in a row.
    at = drawn.centre;
    const int places_away = unplaced_before / 2 + 1;  // the first two stand opposite each other
    const double shift = places_away * 3.6 + 1;
    const bool wide = bounds(drawn.shape).width_mm >= bounds(drawn.shape).height_mm;
    (wide ? at.x_mm : at.y_mm) += (unplaced_before % 2 == 0 ? 1 : -1) * shift;
    if (!inside(drawn.shape, at)) at = drawn.centre;
  } else if (!u) {
    at.x_mm = middle_inside(drawn.shape, at.y_mm, false, drawn.centre.x_mm);
  } else if (!v) {
    at.y_mm = middle_inside(drawn.shape, at.x_mm, true, drawn.centre.y_mm);
  }
  const double least = spot.is_repair ? 0.5 : least_mm;
  const double whole = spot.is_repair ? 0 : projection.scale;
  const double width = std::max(length_along(spot, *drawn.plan, u_axis) * whole, least);
  const double height = std::max(length_along(spot, *drawn.plan, v_axis) * whole, least);
  // Nor does a side view show on which side of the car a spot of a middle zone lies.
  const bool side_known = spot.at.y_mm || drawn.plan->side() != body::Side::centre ||
                          (projection.view != View::left && projection.view != View::right);
  SpotMark mark{&spot, drawn.view, {}, at, u && v && side_known, false};
  mark.shape = cut_to_zone(patch(at, width, height), drawn);
  return mark;
}

// A spot on the far side of a zone that both side views show.
bool on_far_side(const weighing::Spot& spot, View view) {
  return spot.at.y_mm &&
         ((view == View::left && *spot.at.y_mm > 1) || (view == View::right && *spot.at.y_mm < -1));
}

void draw_station(Layer& layer, At at) {
  constexpr double half_mm = 0.7;
  const std::vector<Polyline> cross{
      segment({at.x_mm - half_mm, at.y_mm - half_mm}, {at.x_mm + half_mm, at.y_mm + half_mm}),
      segment({at.x_mm - half_mm, at.y_mm + half_mm}, {at.x_mm + half_mm, at.y_mm - half_mm})};
  layer.items.push_back(Shape{cross, {}, Stroke{paper, 1.6, {}}});
  layer.items.push_back(Shape{cross, {}, Stroke{ink, 0.6, {}}});
}

// Whether a place is drawn or named: what was found, and stations measured sound.
bool counts(const weighing::Spot& spot) {
  return spot.rank > 0 || (!spot.is_repair && spot.metal.kind == weighing::SpanKind::interval);
}

// A repair lies on its whole zone, whose edge tells of it; only a callout may point at it.
void draw_mark(Drafting& drafting, const SpotMark& mark) {
  Layer& layer = drafting.page.layer("spots");
  const weighing::Spot& spot = *mark.spot;
  if (spot.is_repair) return;
  if (spot.rank == 0) {
    draw_station(layer, mark.at);
    drafting.used.stations = true;
    return;
  }
  const Stroke halo{paper, 1.5, {}};
  const Stroke edge = mark.place_known ? Stroke{ink, 0.5, {}} : Stroke{ink, 0.6, {0.7, 0.5}};
  layer.items.push_back(Shape{mark.shape, {}, halo});
  layer.items.push_back(drafting.dress.spot ? drafting.dress.spot(mark)
                                            : strong_fill(spot.step, mark.shape));
  layer.items.push_back(Shape{mark.shape, {}, edge});
  if (!drafting.dress.spot) drafting.used.spots.insert(spot.step);
  drafting.used.place_unknown |= !mark.place_known;
}

// How far a mark lies off its zone as the view draws it: a corner of a wing that the front view
// shows round the bend would be drawn in the air.
double off_zone_mm(const SpotMark& mark, const DrawnZone& drawn) {
  const geometry::Outline zone = outline_of(drawn);
  return zone.rings.empty() ? 0 : geometry::distance_to(zone, {mark.at.x_mm, mark.at.y_mm});
}

// Keeps the marks that lie on their zone, or the nearest to it where none does.
void drop_strays(std::vector<std::pair<double, SpotMark>>& marks) {
  constexpr double stray_mm = 1;
  double nearest = std::numeric_limits<double>::infinity();
  for (const auto& [off_mm, mark] : marks) nearest = std::min(nearest, off_mm);
  std::erase_if(marks, [&](const auto& each) { return each.first > std::max(stray_mm, nearest); });
}

// The view to name a spot in: one that shows its recorded place, then the one with most room.
void choose_principal(Drafting& drafting, std::size_t first) {
  std::size_t best = first;
  double best_room = -1;
  for (std::size_t i = first; i < drafting.spots.size(); ++i) {
    const SpotMark& mark = drafting.spots[i];
    double room = mark.place_known ? 1000 : 0;
    for (const DrawnZone& drawn : drafting.zones) {
      if (drawn.view == mark.view && drawn.zone->number == mark.spot->zone) room += drawn.room_mm;
    }
    if (room > best_room) {
      best = i;
      best_room = room;
    }
  }
  if (best < drafting.spots.size()) drafting.spots[best].principal = true;
}

}  // namespace

void draw_spots(Drafting& drafting) {
  std::map<std::pair<int, std::size_t>, int> unplaced;  // by zone and view
  for (const weighing::Zone& zone : drafting.result.zones) {
    std::vector<const weighing::Spot*> spots;
    for (const weighing::Spot& spot : zone.spots) {
      if (counts(spot)) spots.push_back(&spot);
    }
    // Worst last, on top.
    std::stable_sort(spots.begin(), spots.end(),
                     [](const auto* a, const auto* b) { return a->step < b->step; });
    for (const weighing::Spot* spot : spots) {
      const std::size_t first = drafting.spots.size();
      std::vector<std::pair<double, SpotMark>> marks;
      for (const DrawnZone& drawn : drafting.zones) {
        if (zone.number == 0 || drawn.zone->number != zone.number) continue;
        const View view = drafting.sheet.views[drawn.view].projection.view;
        if (on_far_side(*spot, view)) continue;
        int& before = unplaced[{zone.number, drawn.view}];
        SpotMark mark = mark_of(drafting, *spot, drawn, before);
        if (!spot->at.known()) ++before;
        marks.emplace_back(off_zone_mm(mark, drawn), std::move(mark));
      }
      drop_strays(marks);
      for (auto& [off_mm, mark] : marks) {
        draw_mark(drafting, mark);
        drafting.spots.push_back(std::move(mark));
      }
      if (spot->rank > 0) choose_principal(drafting, first);
    }
  }
}

}  // namespace tinworm::scene
