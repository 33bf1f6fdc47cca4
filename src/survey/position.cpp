#include "survey/position.hpp"

#include <fmt/format.h>

#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::MapReader;
using yaml::Node;

std::optional<double>* axis_of(Position& at, std::string_view word) {
  if (word == "x") return &at.x_mm;
  if (word == "y") return &at.y_mm;
  if (word == "z") return &at.z_mm;
  return nullptr;
}

// `x 1150 z 200`: a letter, then a length up to the next letter.
Position position_in_line(Page& page, const Node& node) {
  Position at;
  const auto words = between_spaces(node.text);
  for (std::size_t i = 0; i < words.size();) {
    std::optional<double>* axis = axis_of(at, words[i]);
    std::size_t end = i + 1;
    while (end < words.size() && !axis_of(at, words[end])) ++end;
    const Node here = page.part_of(node, words[i]);
    if (!axis || end == i + 1) {
      page.add({here.place, "a position is an axis and a number for it", here.text, "x 1150 z 200",
                "x rearward from the front axle, y to the right, z up"});
      return at;
    }
    if (*axis) page.add({here.place, "an axis stands twice in one position", here.text, "", ""});
    const std::size_t from = static_cast<std::size_t>(&words[i + 1].front() - &node.text.front());
    const std::size_t to = static_cast<std::size_t>(&words[end - 1].back() - &node.text.front());
    const std::string_view number = std::string_view(node.text).substr(from, to - from + 1);
    *axis = coordinate_mm(page, page.part_of(node, number));
    i = end;
  }
  return at;
}

}  // namespace

Position read_position(Page& page, const Node& node) {
  if (node.kind == Node::Kind::scalar)
    return is_short(page, node, "a position") ? position_in_line(page, node) : Position{};
  Position at;
  MapReader map(node, page.problems, "a position");
  for (const std::string_view axis : {"x", "y", "z"})
    if (const Node* value = map.optional(axis)) *axis_of(at, axis) = coordinate_mm(page, *value);
  if (map.is_map() && node.entries.empty())
    page.add({node.place, "a position is empty", "", "{x: 1150, z: 200}", ""});
  map.finish();
  return at;
}

std::string position_text(const Position& at) {
  std::string text;
  const auto add = [&](char axis, const std::optional<double>& at_mm) {
    if (at_mm) text += fmt::format("{}{} {:g} mm", text.empty() ? "" : " ", axis, *at_mm);
  };
  add('x', at.x_mm);
  add('y', at.y_mm);
  add('z', at.z_mm);
  return text;
}

}  // namespace tinworm::survey
