#include "body/reader.hpp"

#include <algorithm>

#include "body/box_reader.hpp"
#include "body/line_reader.hpp"
#include "body/mount_reader.hpp"
#include "body/option_reader.hpp"
#include "body/zone_reader.hpp"
#include "geometry/area.hpp"

namespace tinworm::body {
namespace {

std::string read_name(Context& context, const yaml::Node* node) {
  const std::string name = text(context, node, "the body's name");
  const auto fits = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  };
  if (!name.empty() && !std::all_of(name.begin(), name.end(), fits))
    context.refuse({node->place, "the body's name is not in plain words", name,
                    "lower-case letters and digits joined by hyphens, as in two-door-saloon", ""});
  return name;
}

Size read_size(Context& context, const yaml::Node* node) {
  if (!node) return {};
  yaml::MapReader map(*node, context.problems, "the size");
  Size size;
  size.length_mm = length_mm(context, map.required("length"), "the length", size_range_mm);
  size.width_mm = length_mm(context, map.required("width"), "the width", size_range_mm);
  size.height_mm = length_mm(context, map.required("height"), "the height", size_range_mm);
  size.wheelbase_mm = length_mm(context, map.required("wheelbase"), "the wheelbase", size_range_mm);
  map.finish();
  if (size.length_mm > 0 && size.wheelbase_mm >= size.length_mm)
    context.refuse({node->place, "the wheelbase is not shorter than the car",
                    fmt::format("wheelbase {:g}, length {:g}", size.wheelbase_mm, size.length_mm),
                    "", "check the two"});
  return size;
}

void check_references(Context& context, const std::set<int>& named) {
  for (const ZoneReference& reference : context.references)
    if (!named.contains(reference.number))
      context.refuse({reference.place, fmt::format("{}: the plan has no such zone", reference.what),
                      fmt::format("{}", reference.number), "",
                      fmt::format("add zone {} or take it out here", reference.number)});
}

std::map<Side, std::vector<int>> read_sills(Context& context, const yaml::Node* node) {
  if (!node) return {};
  std::map<Side, std::vector<int>> sills;
  yaml::MapReader map(*node, context.problems, "`sills`");
  for (const Side side : {Side::left, Side::right})
    if (const yaml::Node* of_side = map.optional(word(side)))
      sills[side] = zones(context, of_side, fmt::format("the {} sill", word(side)));
  map.finish();
  return sills;
}

// All that is drawn, along the car.
geometry::Interval run_along(const Plan& plan) {
  geometry::Interval run = plan.zones.front().extent.x;
  const auto add = [&](geometry::Interval other) {
    run = {std::min(run.low, other.low), std::max(run.high, other.high)};
  };
  for (const Zone& zone : plan.zones) add(zone.extent.x);
  for (const auto& [view, lines] : plan.lines)
    if (first_axis(view) == Axis::along)
      for (const Line& line : lines)
        for (const geometry::Outline& shape : line.shapes) add(geometry::bounds(shape).u);
  return run;
}

Plan read(Context& context, const yaml::Node& root) {
  yaml::MapReader map(root, context.problems, "the body plan");
  Plan plan;
  whole_number(context, map.required("plan"), "the version of the file format (plan)",
               format_version, format_version);
  plan.name = read_name(context, map.required("body"));
  plan.version = whole_number(context, map.required("version"), "the version of the body plan", 1,
                              highest_version);
  plan.title = text(context, map.required("title"), "the title");
  plan.construction =
      one_of(context, map.required("construction"), "the construction", construction_words())
          .value_or(Construction::unitary);
  // Without a known construction a frame view is nobody's mistake.
  context.construction =
      context.problems.empty() ? plan.construction : Construction::separate_chassis;
  plan.size = read_size(context, map.required("size"));
  plan.lines = read_lines(context, map.optional("lines"));
  Zones zones = read_zones(context, map.required("zones"));
  plan.zones = std::move(zones.zones);
  plan.mounts = read_mounts(context, map.optional("mounts"));
  plan.boxes = read_boxes(context, map.optional("boxes"));
  plan.sills = read_sills(context, map.optional("sills"));
  plan.options = read_options(context, map.optional("options"));
  plan.openings = read_openings(context, map.optional("openings"));
  map.finish();
  check_references(context, zones.named);
  return plan;
}

}  // namespace

Reading read_plan(std::string_view yaml) {
  Reading reading;
  const auto root = yaml::parse(yaml);
  if (!root) {
    reading.problems = root.error();
    return reading;
  }
  Context context{yaml, reading.problems};
  Plan plan = read(context, *root);
  std::stable_sort(reading.problems.begin(), reading.problems.end(),
                   [](const auto& a, const auto& b) { return a.place < b.place; });
  if (!reading.problems.empty()) return reading;
  plan.x = run_along(plan);
  reading.plan = std::move(plan);
  return reading;
}

}  // namespace tinworm::body
