#include "body/mirror.hpp"

namespace tinworm::body {
namespace {

std::vector<int> mirrored_numbers(std::vector<int> numbers) {
  for (int& number : numbers) number = mirrored_number(number);
  return numbers;
}

// "carpet-left" and "carpet-right".
std::string mirrored_name(const std::string& name) {
  const std::string left = "-left", right = "-right";
  if (name.ends_with(left)) return name.substr(0, name.size() - left.size()) + right;
  if (name.ends_with(right)) return name.substr(0, name.size() - right.size()) + left;
  return name;
}

}  // namespace

int mirrored_number(int number) {
  return pair_of(number).value_or(number);
}

geometry::Point3 mirrored(const geometry::Point3& point) {
  return {point.x_mm, 0.0 - point.y_mm, point.z_mm};  // never -0
}

geometry::Interval mirrored(const geometry::Interval& across) {
  return {0.0 - across.high, 0.0 - across.low};
}

Zone mirrored(const Zone& zone) {
  Zone twin = zone;
  twin.number = mirrored_number(zone.number);
  for (Drawing& drawing : twin.drawn) {
    drawing.outline = mirrored(drawing.outline, drawing.view);
    drawing.view = mirrored(drawing.view);
  }
  for (Station& station : twin.stations) station.at = mirrored(station.at);
  twin.extent.y = mirrored(zone.extent.y);
  twin.hides = mirrored_numbers(zone.hides);
  twin.joins = mirrored_numbers(zone.joins);
  twin.opening = mirrored_name(zone.opening);
  return twin;
}

Mount mirrored(const Mount& mount) {
  Mount twin = mount;
  twin.at = mirrored(mount.at);
  twin.on = mirrored_numbers(mount.on);
  twin.into = mirrored_numbers(mount.into);
  return twin;
}

Box mirrored(const Box& box) {
  Box twin = box;
  for (auto& [name, point] : twin.points) {
    if (box.axis == Axis::along) point.u = 0.0 - point.u;  // (y, z)
    if (box.axis == Axis::up) point.v = 0.0 - point.v;     // (x, y)
  }
  if (box.axis == Axis::across) {
    const geometry::Interval twin_run = mirrored(geometry::Interval{box.from_mm, box.to_mm});
    twin.from_mm = twin_run.low;
    twin.to_mm = twin_run.high;
  }
  for (BoxWall& wall : twin.walls) wall.zone = mirrored_number(wall.zone);
  return twin;
}

}  // namespace tinworm::body
