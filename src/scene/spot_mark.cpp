#include "scene/spot_mark.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

#include "geometry/area.hpp"
#include "scene/palette.hpp"
#include "scene/spot_shape.hpp"
#include "weighing/nearness.hpp"

namespace tinworm::scene {
namespace {

using body::Axis;
using body::View;
using weighing::coordinate;
using weighing::extent;

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

// Seen on its edge, or long and thin, a spot keeps a band that shows, never twice its own breadth
// where it has one.
double band_mm(double true_mm) {
  constexpr double least_band_mm = 0.7;
  if (true_mm <= 0) return least_band_mm;
  return std::max(true_mm, std::min(least_band_mm, 1.9 * true_mm));
}

MarkKind kind_of(const SpotMark& mark, double width_mm, double height_mm) {
  const weighing::Spot& spot = *mark.spot;
  if (spot.is_repair) return MarkKind::none;
  if (spot.rank == 0) return MarkKind::station;
  if (!mark.place_known || !spot.size || spot.size_assumed) return MarkKind::open;
  return std::max(width_mm, height_mm) < least_spot_mm ? MarkKind::symbol : MarkKind::patch;
}

// `dressed`: filled to tell something else than its step, so always a patch that shows.
void shape_mark(SpotMark& mark, const DrawnZone& drawn, double width_mm, double height_mm,
                bool dressed) {
  const MarkKind kind = kind_of(mark, width_mm, height_mm);
  mark.kind = kind;
  if (kind == MarkKind::none || kind == MarkKind::station) {
    mark.shape = {patch(mark.at, 0.5, 0.5)};
  } else if (dressed) {
    mark.kind = MarkKind::patch;
    mark.shape = cut_to_zone(
        patch(mark.at, std::max(width_mm, least_spot_mm), std::max(height_mm, least_spot_mm)),
        drawn);
  } else if (kind == MarkKind::symbol) {
    mark.shape = {symbol(mark.at)};
  } else if (kind == MarkKind::open) {
    mark.shape = {open_mark(mark.at)};
  } else {
    mark.shape = cut_to_zone(patch(mark.at, band_mm(width_mm), band_mm(height_mm)), drawn);
  }
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
  // Nor does a side view show on which side of the car a spot of a middle zone lies.
  const bool side_known = spot.at.y_mm || drawn.plan->side() != body::Side::centre ||
                          (projection.view != View::left && projection.view != View::right);
  SpotMark mark{&spot, drawn.view, {}, at, u && v && side_known, MarkKind::none, false};
  const double width = length_along(spot, *drawn.plan, u_axis) * projection.scale;
  const double height = length_along(spot, *drawn.plan, v_axis) * projection.scale;
  shape_mark(mark, drawn, width, height, drafting.dress.spot != nullptr);
  return mark;
}

// A spot on the far side of a zone that both side views show.
bool on_far_side(const weighing::Spot& spot, View view) {
  return spot.at.y_mm &&
         ((view == View::left && *spot.at.y_mm > 1) || (view == View::right && *spot.at.y_mm < -1));
}

// Whether a place is drawn or named: what was found, and stations measured sound.
bool counts(const weighing::Spot& spot) {
  return spot.rank > 0 || (!spot.is_repair && spot.metal.kind == weighing::SpanKind::interval);
}

// A repair lies on its whole zone, whose edge tells of it; only a callout may point at it.
void draw_mark(Drafting& drafting, const SpotMark& mark) {
  Layer& layer = drafting.page.layer("spots");
  Used& used = drafting.used;
  const weighing::Spot& spot = *mark.spot;
  const auto put = [&](std::vector<Item> items) {
    for (Item& each : items) layer.items.push_back(std::move(each));
  };
  if (mark.kind == MarkKind::none) return;
  if (mark.kind == MarkKind::station) {
    used.stations = true;
    return put(station_cross(mark.at));
  }
  if (drafting.dress.spot) {
    const Stroke edge = mark.place_known ? Stroke{ink, 0.5, {}} : Stroke{ink, 0.6, {0.7, 0.5}};
    used.place_unknown |= !mark.place_known;
    return put({Shape{mark.shape, {}, Stroke{paper, 1.5, {}}}, drafting.dress.spot(mark),
                Shape{mark.shape, {}, edge}});
  }
  const bool measured = spot.evidence == weighing::Evidence::measured;
  used.spots.insert(spot.step);
  used.symbols |= mark.kind == MarkKind::symbol;
  used.open_marks |= mark.kind == MarkKind::open;
  if (mark.kind != MarkKind::open) (measured ? used.measured : used.judged) = true;
  put(inked(mark.kind, spot.step, measured, mark.shape));
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
        const PlacedView& placed = drafting.sheet.views[drawn.view];
        // A detail shows what is known to lie there.
        if (placed.part && !(mark.place_known && placed.area.contains(mark.at))) continue;
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
