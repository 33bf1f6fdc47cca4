#include "weighing/nearness.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/space.hpp"

namespace tinworm::weighing {
namespace {

using body::Axis;

geometry::Interval& extent(geometry::Box3& box, Axis axis) {
  return axis == Axis::along ? box.x : axis == Axis::across ? box.y : box.z;
}

constexpr double tolerance_mm = 1e-9;

bool within(double distance_mm, double limit_mm) {
  return distance_mm <= limit_mm + tolerance_mm;
}

bool has(const std::vector<int>& zones, int number) {
  return std::ranges::find(zones, number) != zones.end();
}

// Whether a mount can make a place on this zone near by distance alone.
bool radius_holds(const body::Zone& zone, const body::Plan& plan) {
  if (zone.joined != body::Joined::welded) return false;
  if (plan.construction == body::Construction::unitary) return true;
  return std::ranges::any_of(zone.drawn, [](const auto& d) { return d.view == body::View::frame; });
}

double farthest_mm(const geometry::Point3& from, const geometry::Box3& box) {
  const auto most = [](double x, const geometry::Interval& run) {
    return std::max(std::abs(x - run.low), std::abs(x - run.high));
  };
  return std::hypot(most(from.x_mm, box.x), most(from.y_mm, box.y), most(from.z_mm, box.z));
}

// What lies at this distance from the mount is, if it is anything.
Near relation(const body::Mount& mount, const body::Zone& zone, const body::Plan& plan,
              double distance_mm, const rules::Rules& rules) {
  if (!within(distance_mm, rules.near_radius_mm)) return Near::no;
  if (has(mount.on, zone.number)) return Near::on_mount;
  if (has(mount.into, zone.number)) return Near::into_mount;
  return radius_holds(zone, plan) ? Near::within_radius : Near::no;
}

bool is_worse(const Bearing& one, const Bearing& other, const rules::Rules& rules) {
  const int a = row_of(one, rules), b = row_of(other, rules);
  if (a != b) return a > b;
  return one.near != Near::no && one.distance_mm < other.distance_mm - tolerance_mm;
}

Bearing bearing(const body::Mount& mount, const body::Zone& zone, const body::Plan& plan,
                double distance_mm, const rules::Rules& rules) {
  const Near near = relation(mount, zone, plan, distance_mm, rules);
  if (near == Near::no) return {};
  return {near, mount.what, mount.carries, distance_mm, zone.doubler};
}

void set_tank(Nearness& found, double distance_mm, bool sure) {
  const auto least = [&](std::optional<double>& known) {
    known = std::min(known.value_or(distance_mm), distance_mm);
  };
  least(found.may_tank_mm);
  if (sure) least(found.tank_mm);
}

Nearness in_box(const geometry::Box3& box, bool sure, const body::Zone& zone,
                const std::vector<const body::Mount*>& mounts, const body::Plan& plan,
                const rules::Rules& rules) {
  Nearness found;
  if (zone.role == body::Role::skin) return found;
  for (const body::Mount* mount : mounts) {
    const double distance_mm = geometry::distance_mm(mount->at, box);
    const bool stands = has(mount->on, zone.number);
    if (mount->carries == body::Carries::tank && stands) set_tank(found, distance_mm, sure);
    if (!body::under_near_rule(mount->carries)) continue;
    const Bearing at_worst = bearing(*mount, zone, plan, distance_mm, rules);
    if (is_worse(at_worst, found.may_be, rules)) found.may_be = at_worst;
    const double sure_mm = sure || !stands ? distance_mm : farthest_mm(mount->at, zone.extent);
    const Bearing for_sure =
        sure || stands ? bearing(*mount, zone, plan, sure_mm, rules) : Bearing{};
    if (is_worse(for_sure, found.sure, rules)) found.sure = for_sure;
  }
  return found;
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

bool is_placed(const survey::Position& at) {
  return at.x_mm.has_value() + at.y_mm.has_value() + at.z_mm.has_value() >= 2;
}

Near Nearness::near() const {
  if (sure.near != Near::no) return sure.near;
  return may_be.near == Near::no ? Near::no : Near::maybe;
}

int row_of(const Bearing& bearing, const rules::Rules& rules) {
  switch (bearing.near) {
    case Near::no:
    case Near::maybe:
      return 0;
    case Near::within_radius:
      return 1;
    case Near::into_mount:
      return within(bearing.distance_mm, rules.into_mm) ? 3 : 2;
    case Near::on_mount:
      return bearing.doubled || within(bearing.distance_mm, rules.on_mm) ? 5 : 4;
  }
  return 0;
}

std::vector<const body::Mount*> mounts_that_count(const survey::Survey& survey) {
  std::vector<const body::Mount*> mounts;
  for (const body::Mount& mount : survey.body->mounts) {
    const auto fitted = [&](int zone) {
      const auto seen = survey.seen.find(zone);
      return seen == survey.seen.end() || seen->second.word != survey::SeenWord::not_fitted;
    };
    if (std::ranges::any_of(mount.on, fitted)) mounts.push_back(&mount);
  }
  return mounts;
}

Nearness nearness(const survey::Position& at, const std::optional<survey::Size>& size,
                  const body::Zone& zone, const std::vector<const body::Mount*>& mounts,
                  const body::Plan& plan, const rules::Rules& rules) {
  return in_box(place_of(at, size, zone), is_placed(at), zone, mounts, plan, rules);
}

Nearness nearness_of_whole(const body::Zone& zone, const std::vector<const body::Mount*>& mounts,
                           const body::Plan& plan, const rules::Rules& rules) {
  Nearness found;
  if (zone.role == body::Role::skin) return found;
  for (const body::Mount* mount : mounts) {
    const bool stands = has(mount->on, zone.number);
    if (mount->carries == body::Carries::tank && stands) set_tank(found, 0, true);
    if (!body::under_near_rule(mount->carries)) continue;
    const double distance_mm = stands ? 0 : geometry::distance_mm(mount->at, zone.extent);
    const Bearing here = bearing(*mount, zone, plan, distance_mm, rules);
    if (is_worse(here, found.sure, rules)) found.sure = found.may_be = here;
  }
  return found;
}

Bearing reached(const body::Zone& zone, const std::vector<const body::Mount*>& mounts,
                const body::Plan& plan, const rules::Rules& rules) {
  Bearing best;
  if (zone.role == body::Role::skin) return best;
  for (const body::Mount* mount : mounts) {
    if (!body::under_near_rule(mount->carries)) continue;
    const double distance_mm = geometry::distance_mm(mount->at, zone.extent);
    Bearing here = bearing(*mount, zone, plan, distance_mm, rules);
    if (has(mount->on, zone.number))
      here = {Near::on_mount, mount->what, mount->carries, distance_mm, zone.doubler};
    const bool nearer = here.near == best.near && here.distance_mm < best.distance_mm;
    if (here.near > best.near || (here.near != Near::no && nearer)) best = here;
  }
  return best;
}

}  // namespace tinworm::weighing
