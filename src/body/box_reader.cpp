#include "body/box_reader.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/mirror.hpp"

namespace tinworm::body {
namespace {

std::vector<std::string> point_names(const Box& box) {
  std::vector<std::string> names;
  for (const auto& [name, point] : box.points) names.push_back(name);
  return names;
}

void read_points(Context& context, const yaml::Node* node, Box& box) {
  if (!node) return;
  const auto what = fmt::format("the points of the box {}", box.name);
  const yaml::MapReader map(*node, context.problems, what);
  if (node->entries.size() > most_points_of_box)
    return context.refuse({node->place, fmt::format("{} are too many", what),
                           fmt::format("{}", node->entries.size()),
                           fmt::format("at most {}", most_points_of_box), ""});
  for (const yaml::Entry& entry : node->entries) {
    if (entry.key.find(' ') != std::string::npos)
      context.refuse({entry.key_place, "a point's name holds a space", entry.key, "",
                      "paths name points between spaces: use one word"});
    const auto at = coordinates_mm(
        context, &entry.value, fmt::format("the point {} of the box {}", entry.key, box.name), 2);
    box.points[entry.key] = at.empty() ? geometry::Point{} : geometry::Point{at[0], at[1]};
  }
}

void check_wall_path(Context& context, const yaml::Node& node, const Box& box,
                     const std::string& path) {
  const auto known = point_names(box);
  const std::vector<std::string> names = points_on(path);
  if (names.size() < 2)
    context.refuse({node.place,
                    fmt::format("a wall of the box {} needs two points or more", box.name), path,
                    "names of points between spaces", ""});
  if (known.empty()) return;  // said already
  for (const std::string& name : names)
    if (!box.points.contains(name))
      context.refuse({node.place, fmt::format("the box {} has no such point", box.name), name,
                      fmt::format("{}", fmt::join(known, ", ")), yaml::did_you_mean(name, known)});
}

BoxWall read_wall(Context& context, const yaml::Node& node, const Box& box) {
  const auto what = fmt::format("a wall of the box {}", box.name);
  yaml::MapReader map(node, context.problems, what);
  BoxWall wall;
  wall.place = node.place;
  const yaml::Node* path = map.required("path");
  wall.path = text(context, path, "the path of " + what);
  if (!wall.path.empty()) check_wall_path(context, *path, box, wall.path);
  wall.zone = zone(context, map.required("zone"), "the zone of " + what);
  map.finish();
  return wall;
}

Box read_box(Context& context, const yaml::Node& node) {
  yaml::MapReader map(node, context.problems, "a box");
  Box box;
  box.place = node.place;
  box.name = text(context, map.required("name"), "the name of a box");
  const auto of = [&](std::string_view key) {
    return fmt::format("the {} of the box {}", key, box.name);
  };
  box.axis = one_of(context, map.required("axis"), of("axis"), axis_words()).value_or(Axis::along);
  const yaml::Node* from = map.required("from");
  const yaml::Node* to = map.required("to");
  const std::size_t before = context.problems.size();
  box.from_mm = coordinate_mm(context, from, of("from"));
  box.to_mm = coordinate_mm(context, to, of("to"));
  if (from && to && context.problems.size() == before && box.from_mm >= box.to_mm)
    context.refuse(
        {from->place, fmt::format("the box {} ends where it begins, or before", box.name),
         fmt::format("from {} to {}", from->text, to->text), "", "swap `from` and `to`"});
  read_points(context, map.required("points"), box);
  for (const yaml::Node& wall : items(context, map.required("walls"), of("walls")))
    box.walls.push_back(read_wall(context, wall, box));
  map.finish();
  return box;
}

// `{name: right sill, mirror: left sill}` once the left one is read.
Box mirror_box(Context& context, const yaml::Node& node, const std::vector<Box>& boxes) {
  yaml::MapReader map(node, context.problems, "a box");
  Box box;
  const std::string name = text(context, map.required("name"), "the name of a box");
  const yaml::Node* twin = map.required("mirror");
  map.finish();
  const std::string twin_name = text(context, twin, fmt::format("the mirror of the box {}", name));
  if (!twin_name.empty()) {
    const auto original = std::find_if(boxes.begin(), boxes.end(), [&](const Box& candidate) {
      return candidate.name == twin_name;
    });
    if (original != boxes.end()) {
      box = mirrored(*original);
    } else {
      std::vector<std::string> known;
      for (const Box& candidate : boxes) known.push_back(candidate.name);
      context.refuse({twin->place, fmt::format("the box {} mirrors a box the plan lacks", name),
                      twin_name, fmt::format("{}", fmt::join(known, ", ")),
                      yaml::did_you_mean(twin_name, known)});
    }
  }
  box.name = name;
  box.place = node.place;
  return box;
}

void check_names(Context& context, const std::vector<Box>& boxes) {
  for (std::size_t i = 0; i < boxes.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (boxes[i].name == boxes[j].name && !boxes[i].name.empty()) {
        context.refuse({boxes[i].place,
                        fmt::format("two boxes have one name; the first stands in line {}",
                                    boxes[j].place.line),
                        boxes[i].name, "", "name each for itself"});
        break;
      }
}

}  // namespace

std::vector<Box> read_boxes(Context& context, const yaml::Node* node) {
  const auto list = items(context, node, "`boxes`");
  if (list.size() > most_boxes) {
    context.refuse({node->place, "the boxes are too many", fmt::format("{}", list.size()),
                    fmt::format("at most {}", most_boxes), ""});
    return {};
  }
  std::vector<Box> written;
  for (const yaml::Node& item : list)
    if (!item.find("mirror")) written.push_back(read_box(context, item));
  std::vector<Box> boxes;
  auto next = written.begin();
  for (const yaml::Node& item : list)  // in the order of the file
    boxes.push_back(item.find("mirror") ? mirror_box(context, item, written) : *next++);
  check_names(context, boxes);
  return boxes;
}

}  // namespace tinworm::body
