#include "weighing/faces.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "weighing/nearness.hpp"

namespace tinworm::weighing {
namespace {

constexpr double tie_mm = 1e-6;

// The extents of a place in the section's plane.
geometry::Rect in_plane(const geometry::Box3& place, body::Axis axis) {
  switch (axis) {
    case body::Axis::along:
      return {place.y, place.z};
    case body::Axis::across:
      return {place.x, place.z};
    case body::Axis::up:
      return {place.x, place.y};
  }
  return {};
}

double beyond(double x, double p, double q) {
  return geometry::Interval{std::min(p, q), std::max(p, q)}.distance(x);
}

// From a face to a rectangle, sampled along the face: near enough to tell 50 mm from more.
double distance_mm(const Face& face, const geometry::Rect& place) {
  constexpr int steps = 32;
  double nearest = std::numeric_limits<double>::infinity();
  for (int i = 0; i <= steps; ++i) {
    const double t = i / static_cast<double>(steps);
    const double u = std::lerp(face.from.u, face.to.u, t);
    const double v = std::lerp(face.from.v, face.to.v, t);
    nearest = std::min(nearest, std::hypot(place.u.distance(u), place.v.distance(v)));
  }
  return nearest;
}

}  // namespace

std::vector<Face> faces(const body::Box& box) {
  std::vector<Face> all;
  for (std::size_t w = 0; w < box.walls.size(); ++w) {
    const std::vector<std::string> names = body::points_on(box.walls[w].path);
    double start_mm = 0;
    for (std::size_t i = 1; i < names.size(); ++i) {
      const geometry::Point a = box.points.at(names[i - 1]), b = box.points.at(names[i]);
      const double length_mm = std::hypot(b.u - a.u, b.v - a.v);
      all.push_back({w, box.walls[w].zone, a, b, start_mm, length_mm});
      start_mm += length_mm;
    }
  }
  return all;
}

body::Box by_faces(const body::Box& box) {
  body::Box split = box;
  split.walls.clear();
  for (const body::BoxWall& wall : box.walls) {
    const std::vector<std::string> names = body::points_on(wall.path);
    for (std::size_t i = 1; i < names.size(); ++i)
      split.walls.push_back({names[i - 1] + " " + names[i], wall.zone, wall.place});
  }
  return split;
}

InPlane in_plane(const survey::Position& at, body::Axis axis) {
  switch (axis) {
    case body::Axis::along:
      return {at.y_mm, at.z_mm};
    case body::Axis::across:
      return {at.x_mm, at.z_mm};
    case body::Axis::up:
      return {at.x_mm, at.y_mm};
  }
  return {};
}

double distance_mm(const InPlane& at, const Face& face) {
  const auto& [a, b] = std::pair(face.from, face.to);
  if (!at.u && !at.v) return 0;
  if (!at.v) return beyond(*at.u, a.u, b.u);
  if (!at.u) return beyond(*at.v, a.v, b.v);
  const double du = b.u - a.u, dv = b.v - a.v;
  const double square = du * du + dv * dv;
  const double t =
      square > 0 ? std::clamp(((*at.u - a.u) * du + (*at.v - a.v) * dv) / square, 0.0, 1.0) : 0;
  return std::hypot(*at.u - a.u - t * du, *at.v - a.v - t * dv);
}

std::vector<const Face*> nearest_faces(const std::vector<Face>& faces, int zone,
                                       const InPlane& at) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const Face& face : faces)
    if (face.zone == zone) nearest = std::min(nearest, distance_mm(at, face));
  std::vector<const Face*> found;
  for (const Face& face : faces)
    if (face.zone == zone && distance_mm(at, face) <= nearest + tie_mm) found.push_back(&face);
  return found;
}

const Face* widest(const std::vector<const Face*>& faces) {
  const auto found = std::ranges::max_element(faces, {}, &Face::length_mm);
  return found == faces.end() ? nullptr : *found;
}

Extents extents(const std::optional<survey::Size>& size, const body::Zone& zone,
                const body::Box& box, const rules::Rules& rules) {
  if (!size) return {rules.unsized_length_share * (box.to_mm - box.from_mm), {}};
  const bool lengthwise = zone.runs == box.axis;
  return lengthwise ? Extents{size->along_mm, size->across_mm}
                    : Extents{size->across_mm, size->along_mm};
}

geometry::Interval along(const survey::Position& at, double length_mm, const body::Box& box) {
  const double middle_mm = (box.from_mm + box.to_mm) / 2;
  const double centre_mm = coordinate(at, box.axis).value_or(middle_mm);
  return {centre_mm - length_mm / 2, centre_mm + length_mm / 2};
}

bool lies_in(const Spot& spot, const body::Zone& zone, const body::Box& box,
             const std::vector<Face>& faces, const rules::Rules& rules) {
  double wall_mm = 0;
  for (const Face& face : faces)
    if (face.zone == zone.number) wall_mm += face.length_mm;
  constexpr double mm2_per_m2 = 1e6;
  const double share = wall_mm * (box.to_mm - box.from_mm) / (zone.area_m2 * mm2_per_m2);
  const bool most_of_the_part = share + 1e-9 >= 0.5;
  if (most_of_the_part) return true;
  const InPlane known = in_plane(spot.at, box.axis);
  if (!known.u && !known.v && !coordinate(spot.at, box.axis)) return false;
  const geometry::Box3 place = place_of(spot.at, spot.size, zone);
  const geometry::Rect rect = in_plane(place, box.axis);
  const geometry::Interval length = extent(place, box.axis);
  const double off_end_mm = std::max({box.from_mm - length.high, length.low - box.to_mm, 0.0});
  return std::ranges::any_of(faces, [&](const Face& face) {
    return face.zone == zone.number &&
           std::hypot(distance_mm(face, rect), off_end_mm) <= rules.wall_reach_mm + 1e-9;
  });
}

}  // namespace tinworm::weighing
