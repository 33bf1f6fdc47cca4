#include "weighing/nearness.hpp"

#include <algorithm>
#include <limits>

#include "geometry/space.hpp"

namespace tinworm::weighing {
namespace {

using body::Axis;

geometry::Interval& extent(geometry::Box3& box, Axis axis) {
  return axis == Axis::along ? box.x : axis == Axis::across ? box.y : box.z;
}

bool stands_on(const body::Mount& mount, const body::Zone& zone) {
  return std::ranges::find(mount.on, zone.number) != mount.on.end();
}

// Whether a mount can make a place on this zone near by distance alone.
bool radius_holds(const body::Zone& zone, const body::Plan& plan) {
  if (zone.joined != body::Joined::welded) return false;
  if (plan.construction == body::Construction::unitary) return true;
  return std::ranges::any_of(zone.drawn, [](const auto& d) { return d.view == body::View::frame; });
}

struct Candidate {
  const body::Mount* mount = nullptr;
  bool on = false;
  double distance_mm = std::numeric_limits<double>::infinity();
};

// The mount that counts most for a box of the zone: one it stands on, else the nearest in reach.
Candidate nearest(const geometry::Box3& box, const body::Zone& zone, const body::Plan& plan,
                  double radius_mm) {
  Candidate best;
  if (zone.role == body::Role::skin) return best;
  const bool by_radius = radius_holds(zone, plan);
  for (const body::Mount& mount : plan.mounts) {
    if (!body::under_near_rule(mount.carries)) continue;
    const Candidate each{&mount, stands_on(mount, zone), geometry::distance_mm(mount.at, box)};
    if (!each.on && !(by_radius && each.distance_mm <= radius_mm)) continue;
    const bool better = each.on != best.on ? each.on : each.distance_mm < best.distance_mm;
    if (better) best = each;
  }
  return best;
}

}  // namespace

geometry::Interval extent(const geometry::Box3& box, Axis axis) {
  return axis == Axis::along ? box.x : axis == Axis::across ? box.y : box.z;
}

std::optional<double> coordinate(const survey::Position& at, Axis axis) {
  return axis == Axis::along ? at.x_mm : axis == Axis::across ? at.y_mm : at.z_mm;
}

Axis across_axis(const body::Zone& zone) {
  Axis widest = zone.runs == Axis::along ? Axis::across : Axis::along;
  for (const Axis axis : {Axis::along, Axis::across, Axis::up}) {
    if (axis == zone.runs) continue;
    if (extent(zone.extent, axis).length() > extent(zone.extent, widest).length()) widest = axis;
  }
  return widest;
}

geometry::Box3 place_of(const survey::Position& at, const std::optional<survey::Size>& size,
                        const body::Zone& zone) {
  geometry::Box3 box = zone.extent;
  const Axis across = across_axis(zone);
  for (const Axis axis : {Axis::along, Axis::across, Axis::up}) {
    const std::optional<double> centre = coordinate(at, axis);
    if (!centre) continue;
    double half = 0;
    if (size && axis == zone.runs) half = size->along_mm / 2;
    if (size && axis == across) half = size->across_mm / 2;
    extent(box, axis) = {*centre - half, *centre + half};
  }
  return box;
}

Nearness nearness(const survey::Position& at, const std::optional<survey::Size>& size,
                  const body::Zone& zone, const body::Plan& plan, const rules::Rules& rules) {
  const Candidate best = nearest(place_of(at, size, zone), zone, plan, rules.near_radius_mm);
  if (!best.mount) return {};
  const Near near = best.on ? Near::on_mount : at.known() ? Near::within_radius : Near::maybe;
  return {near, best.mount->what, best.distance_mm};
}

const body::Mount* mount_on(const body::Zone& zone, const body::Plan& plan) {
  const Candidate best = nearest(zone.extent, zone, plan, -1);
  return best.mount;
}

const body::Mount* mount_reached(const body::Zone& zone, const body::Plan& plan,
                                 const rules::Rules& rules) {
  return nearest(zone.extent, zone, plan, rules.near_radius_mm).mount;
}

}  // namespace tinworm::weighing
