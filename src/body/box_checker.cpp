#include "body/box_checker.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/core.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace tinworm::body {
namespace {

constexpr double on_wall_mm = 0.5;

double distance_mm(geometry::Point p, geometry::Point a, geometry::Point b) {
  const double du = b.u - a.u, dv = b.v - a.v;
  const double length2 = du * du + dv * dv;
  const double along =
      length2 > 0 ? std::clamp(((p.u - a.u) * du + (p.v - a.v) * dv) / length2, 0.0, 1.0) : 0;
  return std::hypot(p.u - a.u - along * du, p.v - a.v - along * dv);
}

std::string all_names(const Box& box) {
  std::vector<std::string> names;
  for (const auto& [name, point] : box.points) names.push_back(name);
  return fmt::format("{}", fmt::join(names, " "));
}

// Points that lie between two named ones, or on one under another name.
void check_passed(const Box& box, const BoxWall& wall, const std::vector<std::string>& path,
                  yaml::Problems& problems) {
  for (const auto& [name, point] : box.points) {
    if (std::find(path.begin(), path.end(), name) != path.end()) continue;
    for (std::size_t i = 1; i < path.size(); ++i) {
      const double away_mm = distance_mm(point, box.points.at(path[i - 1]), box.points.at(path[i]));
      if (away_mm > on_wall_mm) continue;
      problems.push_back(
          {wall.place,
           fmt::format("wall {} of box {} passes point {} without naming it", wall.path, box.name,
                       name),
           "", "",
           fmt::format("write {} between {} and {}, or move it", name, path[i - 1], path[i])});
      break;
    }
  }
}

void check_wall(const Plan& plan, const Box& box, const BoxWall& wall, yaml::Problems& problems) {
  if (plan.zone(wall.zone) == nullptr) {
    problems.push_back(
        {wall.place,
         fmt::format("wall {} of box {} belongs to a zone this body lacks", wall.path, box.name),
         std::to_string(wall.zone), "", "correct the number, or add the zone"});
  }
  const std::vector<std::string> path = points_on(wall.path);
  if (path.size() < 2 || std::adjacent_find(path.begin(), path.end()) != path.end()) {
    problems.push_back(
        {wall.place, fmt::format("a wall of box {} has a part without length", box.name), wall.path,
         "the names of two points or more, none twice in a row", "name where it begins and ends"});
    return;
  }
  bool known = true;
  for (const std::string& name : path) {
    if (box.points.count(name) > 0) continue;
    known = false;
    problems.push_back(
        {wall.place,
         fmt::format("wall {} of box {} goes by a point the box lacks", wall.path, box.name), name,
         all_names(box), "correct the wall's path, or add the point"});
  }
  if (known) check_passed(box, wall, path, problems);
}

}  // namespace

void check_box(const Plan& plan, const Box& box, yaml::Problems& problems) {
  for (const BoxWall& wall : box.walls) check_wall(plan, box, wall, problems);
}

}  // namespace tinworm::body
