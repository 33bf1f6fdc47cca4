#include "work/cuts.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/point.hpp"
#include "weighing/nearness.hpp"
#include "work/job.hpp"

namespace tinworm::work {
namespace {

using body::Axis;
using geometry::Interval;
using geometry::Rect;

struct Extent {  // of the part, along and across its run
  Rect rect;
  Axis along = Axis::along, across = Axis::up;
};

std::optional<Extent> extent_of(const weighing::ZoneFacts& zone) {
  if (!zone.plan) return std::nullopt;
  const Axis across = weighing::across_axis(*zone.plan);
  return Extent{{weighing::extent(zone.plan->extent, zone.plan->runs),
                 weighing::extent(zone.plan->extent, across)},
                zone.plan->runs,
                across};
}

// Round `centre`, moved into the part: what was measured at its edge lies on it.
Interval around(double centre, double length, const Interval& whole) {
  const double fits = std::min(length, whole.length());
  const double low = std::clamp(centre - fits / 2, whole.low, whole.high - fits);
  return {low, low + fits};
}

double gap(const Interval& a, const Interval& b) {
  return std::max({a.low - b.high, b.low - a.high, 0.0});
}

Interval hull(const Interval& a, const Interval& b) {
  return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

Rect hull(const Rect& a, const Rect& b) {
  return {hull(a.u, b.u), hull(a.v, b.v)};
}

// One figure of each range: low, likely or high.
using Figure = double Range::*;
constexpr Figure figures[] = {&Range::low, &Range::likely, &Range::high};

survey::Size size_at(const Place& place, const rates::Rates& rates, Figure figure) {
  const double square = rates.unsized_mm.*figure;
  return place.size.value_or(survey::Size{square, square});
}

struct Group {
  std::vector<const Place*> places;
  std::optional<Rect> likely;  // none: not placed
};

std::optional<geometry::Point> centre(const Place& place, const Extent& extent) {
  const auto u = weighing::coordinate(place.at, extent.along);
  const auto v = weighing::coordinate(place.at, extent.across);
  if (!u || !v || extent.rect.u.distance(*u) > 0 || extent.rect.v.distance(*v) > 0)
    return std::nullopt;
  return geometry::Point{*u, *v};
}

Rect rect_at(const Place& place, const Extent& extent, const rates::Rates& rates, Figure figure) {
  const geometry::Point at = *centre(place, extent);
  const survey::Size size = size_at(place, rates, figure);
  return {around(at.u, size.along_mm, extent.rect.u), around(at.v, size.across_mm, extent.rect.v)};
}

bool join_once(std::vector<Group>& groups, double join_mm) {
  for (std::size_t a = 0; a < groups.size(); ++a)
    for (std::size_t b = a + 1; b < groups.size(); ++b) {
      if (!groups[a].likely || !groups[b].likely) continue;
      const double apart = std::hypot(gap(groups[a].likely->u, groups[b].likely->u),
                                      gap(groups[a].likely->v, groups[b].likely->v));
      if (apart >= join_mm) continue;
      groups[a].likely = hull(*groups[a].likely, *groups[b].likely);
      groups[a].places.insert(groups[a].places.end(), groups[b].places.begin(),
                              groups[b].places.end());
      groups.erase(groups.begin() + static_cast<std::ptrdiff_t>(b));
      return true;
    }
  return false;
}

std::vector<Group> joined(const std::vector<Place>& places, const std::optional<Extent>& extent,
                          const rates::Rates& rates) {
  std::vector<Group> groups;
  for (const Place& place : places) {
    Group group{{&place}, std::nullopt};
    if (extent && centre(place, *extent))
      group.likely = rect_at(place, *extent, rates, &Range::likely);
    groups.push_back(std::move(group));
  }
  while (join_once(groups, rates.join_mm)) continue;
  return groups;
}

// With the margin; a side near the edge, or over it, goes to it.
Interval widened(const Interval& cut, const Interval& whole, double margin_mm, double near_mm) {
  Interval wide = {cut.low - margin_mm, cut.high + margin_mm};
  if (wide.low - whole.low <= near_mm) wide.low = whole.low;
  if (whole.high - wide.high <= near_mm) wide.high = whole.high;
  return wide;
}

std::pair<const char*, const char*> side_names(Axis axis) {
  switch (axis) {
    case Axis::along:
      return {"front", "rear"};
    case Axis::across:
      return {"left", "right"};
    case Axis::up:
      break;
  }
  return {"lower", "upper"};
}

void add_edges(std::vector<std::string>& names, const Interval& cut, const Interval& whole,
               Axis axis) {
  const auto [low, high] = side_names(axis);
  if (cut.low <= whole.low) names.emplace_back(low);
  if (cut.high >= whole.high) names.emplace_back(high);
}

void set_placed(Cut& cut, const Group& group, const Extent& extent, const rates::Rates& rates) {
  for (const Figure figure : figures) {
    Rect rect = rect_at(*group.places.front(), extent, rates, figure);
    for (const Place* place : group.places)
      rect = hull(rect, rect_at(*place, extent, rates, figure));
    const double margin_mm = rates.margin_mm.*figure, near_mm = rates.to_outline_mm;
    rect = {widened(rect.u, extent.rect.u, margin_mm, near_mm),
            widened(rect.v, extent.rect.v, margin_mm, near_mm)};
    cut.along_mm.*figure = rect.u.length();
    cut.across_mm.*figure = rect.v.length();
    if (figure != &Range::likely) continue;
    cut.along_at = rect.u;
    add_edges(cut.to_edge, rect.u, extent.rect.u, extent.along);
    add_edges(cut.to_edge, rect.v, extent.rect.v, extent.across);
  }
}

void set_alone(Cut& cut, const Place& place, const std::optional<Extent>& extent,
               const rates::Rates& rates) {
  cut.placed = false;
  for (const Figure figure : figures) {
    const survey::Size size = size_at(place, rates, figure);
    const double margins_mm = 2 * rates.margin_mm.*figure;
    cut.along_mm.*figure = size.along_mm + margins_mm;
    cut.across_mm.*figure = size.across_mm + margins_mm;
    if (!extent) continue;
    cut.along_mm.*figure = std::min(cut.along_mm.*figure, extent->rect.u.length());
    cut.across_mm.*figure = std::min(cut.across_mm.*figure, extent->rect.v.length());
  }
}

bool holed_near_end(const Place& place, const Extent& extent, const rates::Rates& rates) {
  const auto u = weighing::coordinate(place.at, extent.along);
  if (!place.holed || !u) return false;
  const Interval& whole = extent.rect.u;
  const double near_mm = rates.sill_end * whole.length();
  return *u - whole.low <= near_mm || whole.high - *u <= near_mm;
}

bool sill_is_renewed(const std::vector<Place>& places, const weighing::ZoneFacts& zone,
                     const Extent& extent, const rates::Rates& rates) {
  return is_sill(job_of(kind_of_part(zone))) &&
         std::ranges::any_of(
             places, [&](const Place& place) { return holed_near_end(place, extent, rates); });
}

// By what is sure alone: a lip that was only judged is measured first.
bool lip_is_renewed(const std::vector<Group>& groups, const weighing::ZoneFacts& zone,
                    const Extent& extent, const rates::Rates& rates) {
  if (kind_of_part(zone) != body::Job::outer_arch) return false;
  double past_mm = 0;
  for (const Group& group : groups) {
    if (std::ranges::none_of(group.places, &Place::certain)) continue;
    past_mm += group.likely ? group.likely->u.length()
                            : size_at(*group.places.front(), rates, &Range::likely).along_mm;
  }
  return past_mm > rates.lip_share * extent.rect.u.length();
}

Cut whole_cut(const std::vector<Place>& places, const Extent& extent) {
  Cut cut;
  for (const Place& place : places) cut.places.push_back(place.name);
  cut.along_at = extent.rect.u;
  const double along = extent.rect.u.length(), across = extent.rect.v.length();
  cut.along_mm = {along, along, along};
  cut.across_mm = {across, across, across};
  cut.whole = true;
  return cut;
}

// A pinhole's own size but at worst; a crack's plate, or none on skin.
void fit_to_damage(Cut& cut, const Group& group, const weighing::ZoneFacts& zone) {
  const Place& place = *group.places.front();
  if (group.places.size() > 1) return;
  if (place.pinhole_mm > 0) {
    const double own = place.pinhole_mm;
    cut.way = Way::weld_up;
    cut.pinhole_mm = own;
    cut.along_mm = {own, own, std::max(own, cut.along_mm.high)};
    cut.across_mm = {own, own, std::max(own, cut.across_mm.high)};
    cut.to_edge.clear();
  } else if (place.crack_mm > 0) {
    cut.way = Way::crack;
    cut.crack_mm = place.crack_mm;
    cut.plated = zone.load_bearing();
    cut.to_edge.clear();
  }
}

}  // namespace

std::vector<Cut> cuts(const std::vector<Place>& places, const weighing::ZoneFacts& zone,
                      const rates::Rates& rates) {
  const std::optional<Extent> extent = extent_of(zone);
  const std::vector<Group> groups = joined(places, extent, rates);
  if (extent && (sill_is_renewed(places, zone, *extent, rates) ||
                 lip_is_renewed(groups, zone, *extent, rates)))
    return {whole_cut(places, *extent)};
  std::vector<Cut> all;
  for (const Group& group : groups) {
    Cut cut;
    cut.certain = false;
    for (const Place* place : group.places) {
      cut.places.push_back(place->name);
      cut.certain = cut.certain || place->certain;
      cut.size_assumed = cut.size_assumed || !place->size;
    }
    if (group.likely)
      set_placed(cut, group, *extent, rates);
    else
      set_alone(cut, *group.places.front(), extent, rates);
    fit_to_damage(cut, group, zone);
    all.push_back(std::move(cut));
  }
  return all;
}

Range weld_mm(const Cut& cut) {
  const Range round = (cut.along_mm + cut.across_mm) * 2;
  if (cut.way == Way::weld_up) {
    const double seam_mm = std::numbers::pi * cut.pinhole_mm;
    return {seam_mm, seam_mm, std::max(seam_mm, round.high)};
  }
  if (cut.way != Way::crack) return round;
  const Range crack = {cut.crack_mm, cut.crack_mm, cut.crack_mm};
  return cut.plated ? crack + round : crack;
}

Range sheet_mm2(const Cut& cut) {
  const Range area = cut.along_mm * cut.across_mm;
  if (cut.way == Way::weld_up) return {0, 0, area.high};
  if (cut.way == Way::reopened || (cut.way == Way::crack && !cut.plated)) return {};
  return area;
}

}  // namespace tinworm::work
