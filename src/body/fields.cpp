#include "body/fields.hpp"

#include <charconv>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "geometry/path.hpp"
#include "quantity/length.hpp"
#include "quantity/sheet.hpp"

namespace tinworm::body {
namespace {

void refuse_quantity(Context& context, const yaml::Node& node, std::string_view what,
                     const quantity::Refusal& refusal) {
  const auto offset = static_cast<std::size_t>(refusal.offset);
  context.refuse({context.inside(node, offset), fmt::format("{}: {}", what, refusal.what),
                  node.text, refusal.allowed, refusal.cure});
}

// The scalar's text; none and a problem where there is none.
std::optional<std::string_view> scalar(Context& context, const yaml::Node* node,
                                       std::string_view what) {
  if (!node) return {};
  const std::size_t before = context.problems.size();
  const std::string_view text = yaml::scalar(*node, context.problems, what);
  if (context.problems.size() > before) return {};
  return text;
}

double within(Context& context, const yaml::Node& node, std::string_view what, double value,
              Range allowed, std::string_view unit) {
  if (value >= allowed.low && value <= allowed.high) return value;
  context.refuse({node.place, fmt::format("{} is out of range", what), node.text,
                  fmt::format("{} to {} {}", allowed.low, allowed.high, unit), ""});
  return 0;
}

std::size_t point_count(const geometry::Outline& outline) {
  std::size_t count = 0;
  for (const geometry::Ring& ring : outline.rings) count += ring.size();
  for (const auto& line : outline.open) count += line.size();
  return count;
}

std::optional<Shape> within_points(Context& context, const yaml::Node& node, std::string_view what,
                                   Shape shape) {
  const std::size_t count = point_count(shape.outline);
  context.points_drawn += count;
  if (count <= most_points_of_path && context.points_drawn <= most_points_of_plan) return shape;
  const bool one = count > most_points_of_path;
  context.refuse(
      {node.place,
       one ? fmt::format("{}: the path makes {} points once its curves are cut", what, count)
           : fmt::format("{}: with this path the plan has {} points once curves are cut", what,
                         context.points_drawn),
       "",
       fmt::format("at most {}; a Bézier makes 32, an arc one for 5 degrees",
                   one ? most_points_of_path : most_points_of_plan),
       "draw it with fewer curves"});
  return {};
}

}  // namespace

// The search through the source is kept short where mistakes abound: only the first are shown.
yaml::Place Context::inside(const yaml::Node& scalar, std::size_t offset) const {
  constexpr std::size_t pinpointed = 200;
  return problems.size() < pinpointed ? yaml::place_inside(scalar, offset, source) : scalar.place;
}

std::string text(Context& context, const yaml::Node* node, std::string_view what) {
  const auto words = scalar(context, node, what);
  if (!words) return "";
  if (words->find_first_not_of(" \t\n") == words->npos)
    context.refuse({node->place, fmt::format("{} is empty", what), "", "", "write it"});
  return std::string(*words);
}

int whole_number(Context& context, const yaml::Node* node, std::string_view what, int low,
                 int high) {
  const auto digits = scalar(context, node, what);
  if (!digits) return low;
  int value = 0;
  const char* const start = digits->data();
  const char* const end = start + digits->size();
  const auto [stop, error] = std::from_chars(start, end, value);
  if (error == std::errc{} && stop == end && value >= low && value <= high) return value;
  const std::string allowed =
      low == high ? fmt::format("{}", low) : fmt::format("a whole number, {} to {}", low, high);
  context.refuse(
      {node->place, fmt::format("{} is not one that is read", what), node->text, allowed, ""});
  return low;
}

double length_mm(Context& context, const yaml::Node* node, std::string_view what, Range allowed) {
  const auto words = scalar(context, node, what);
  if (!words) return 0;
  const auto length = quantity::parse_length_mm(*words, quantity::Units::mm);
  if (length) return within(context, *node, what, *length, allowed, "mm");
  refuse_quantity(context, *node, what, length.error());
  return 0;
}

double sheet_mm(Context& context, const yaml::Node* node, std::string_view what) {
  const auto words = scalar(context, node, what);
  if (!words) return 0;
  const auto sheet = quantity::parse_sheet_mm(*words, quantity::Units::mm);
  if (sheet) return within(context, *node, what, *sheet, sheet_range_mm, "mm");
  refuse_quantity(context, *node, what, sheet.error());
  return 0;
}

double area_m2(Context& context, const yaml::Node* node, std::string_view what) {
  const auto words = scalar(context, node, what);
  if (!words) return 0;
  const auto area = quantity::parse_area_m2(*words);
  if (!area) {
    refuse_quantity(context, *node, what, area.error());
    return 0;
  }
  if (*area > 0 && *area <= largest_area_m2) return *area;
  context.refuse({node->place, fmt::format("{} is out of range", what), node->text,
                  fmt::format("over 0, at most {} m2", largest_area_m2), ""});
  return 0;
}

double coordinate_mm(Context& context, const yaml::Node* node, std::string_view what) {
  const auto words = scalar(context, node, what);
  if (!words) return 0;
  const auto coordinate = quantity::parse_coordinate_mm(*words, quantity::Units::mm);
  if (coordinate)
    return within(context, *node, what, *coordinate, {-farthest_mm, farthest_mm}, "mm");
  refuse_quantity(context, *node, what, coordinate.error());
  return 0;
}

std::vector<double> coordinates_mm(Context& context, const yaml::Node* node, std::string_view what,
                                   std::size_t count) {
  if (!node) return {};
  const std::size_t before = context.problems.size();
  std::vector<double> values;
  for (const yaml::Node& item : items(context, node, what))
    values.push_back(coordinate_mm(context, &item, what));
  if (context.problems.size() > before) return {};
  if (values.size() == count) return values;
  context.refuse({node->place,
                  fmt::format("{} has {} figures where {} belong", what, values.size(), count), "",
                  count == 3 ? "[x, y, z] in mm" : "[first, second] in mm", ""});
  return {};
}

std::optional<geometry::Point3> point3(Context& context, const yaml::Node* node,
                                       std::string_view what) {
  const auto values = coordinates_mm(context, node, what, 3);
  if (values.empty()) return {};
  return geometry::Point3{values[0], values[1], values[2]};
}

std::optional<geometry::Interval> interval(Context& context, const yaml::Node* node,
                                           std::string_view what) {
  const auto values = coordinates_mm(context, node, what, 2);
  if (values.empty()) return {};
  if (values[0] <= values[1]) return geometry::Interval{values[0], values[1]};
  context.refuse({node->place,
                  fmt::format("{} runs backwards, from {} to {}", what, values[0], values[1]), "",
                  "[least, greatest] in mm", "swap the two"});
  return {};
}

std::optional<int> zone_number(std::string_view text) {
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  if (text.size() != 2 || !digit(text[0]) || !digit(text[1])) return {};
  const int number = (text[0] - '0') * 10 + (text[1] - '0');
  const bool single = number >= 10 && number <= 39;
  const bool of_pair = number >= 41 && number <= 98;
  if (!single && !of_pair) return {};
  return number;
}

std::optional<int> zone_number(Context& context, std::string_view text, yaml::Place place,
                               std::string_view what) {
  const auto number = zone_number(text);
  if (!number)
    context.refuse({place, fmt::format("{} is no zone number", what), std::string(text),
                    "10 to 39 on the centre line and for singles; 41 to 98 for pairs, odd left and "
                    "the next even right",
                    ""});
  return number;
}

int zone(Context& context, const yaml::Node* node, std::string_view what) {
  const auto digits = scalar(context, node, what);
  if (!digits) return 0;
  const auto number = zone_number(context, *digits, node->place, what);
  if (number) context.references.push_back({*number, std::string(what), node->place});
  return number.value_or(0);
}

std::vector<int> zones(Context& context, const yaml::Node* node, std::string_view what) {
  std::vector<int> numbers;
  for (const yaml::Node& item : items(context, node, what))
    if (const int number = zone(context, &item, what)) numbers.push_back(number);
  return numbers;
}

std::optional<Shape> shape(Context& context, const yaml::Node* node, std::string_view what) {
  const auto data = scalar(context, node, what);
  if (!data) return {};
  const auto path = geometry::parse_path(*data);
  if (path)
    return within_points(context, *node, what, {std::string(*data), geometry::flatten(*path)});
  const auto offset = static_cast<std::size_t>(path.error().offset);
  context.refuse(
      {context.inside(*node, offset),
       fmt::format("{}: {}, at character {} of the path", what, path.error().what, offset + 1),
       std::string(data->substr(offset, 20)), path.error().allowed, ""});
  return {};
}

std::span<const yaml::Node> items(Context& context, const yaml::Node* node, std::string_view what) {
  if (!node) return {};
  if (node->kind == yaml::Node::Kind::sequence) return node->items;
  context.refuse({node->place, fmt::format("{} should be a list", what), node->text, "[…, …]", ""});
  return {};
}

void refuse_word(Context& context, const yaml::Node& node, std::string_view what,
                 const std::vector<std::string>& allowed) {
  context.refuse({node.place, fmt::format("{} is not a known word", what), node.text,
                  fmt::format("{}", fmt::join(allowed, ", ")),
                  yaml::did_you_mean(node.text, allowed)});
}

}  // namespace tinworm::body
