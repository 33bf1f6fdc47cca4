#include "schema/drawing_schema.hpp"

#include <array>

#include <fmt/format.h>

#include "body/limits.hpp"
#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

using body::Axis;
using body::Layer;
using body::View;
using body::Word;

constexpr std::array axes{Word{Axis::along, "x"}, Word{Axis::across, "y"}, Word{Axis::up, "z"}};

// Words of a line's filling and of what mirrors, which have no table: there is one of each.
constexpr std::string_view paper = "paper";

Json word(std::string_view only) {
  return {{"enum", {only}}};
}

bool shows(const Word<View>& view, Axis axis) {
  return body::first_axis(view.value) == axis || body::second_axis(view.value) == axis;
}

}  // namespace

Json plan_text() {
  return {{"type", {"string", "number", "boolean"}}, {"pattern", "[^ \\t\\n]"}};
}

Json plan_length(double low, double high) {
  return titled("length", "mm, or with its unit.",
                quantity(low, high, pattern::length(), "a length: 3950, 1560 mm"));
}

Json coordinate() {
  return quantity(-body::farthest_mm, body::farthest_mm, pattern::coordinate(),
                  "a place along an axis: -720, 12.5 mm");
}

Json coordinates(std::size_t count, std::string_view how) {
  return {{"description", how},
          {"type", "array"},
          {"items", coordinate()},
          {"minItems", count},
          {"maxItems", count}};
}

Json path() {
  return titled("path", "SVG path data in body coordinates, mm. A zone's outline ends with Z.",
                matching("[Mm][MmLlHhVvCcSsQqTtAaZzEe0-9+., \\t\\r\\n-]*",
                         "path data: M first, then L H V C S Q T A Z with their numbers"),
                {"M 420 130 L 1870 130 L 1870 300 L 420 300 Z"});
}

Json condition() {
  return titled("when", "Only on cars that have this choice of an option.",
                {{"type", "object"},
                 {"minProperties", 1},
                 {"maxProperties", 1},
                 {"additionalProperties", plan_text()}},
                {{{"steering", "right"}}});
}

Json line() {
  return map_of(
      {{"weight", titled("weight", "What the line shows.", words(body::weight_words())),
        Need::required},
       {"sheet",
        titled("sheet", "The sheet it is drawn on; both if left out.", words(body::layer_words()))},
       {"path", path(), Need::required},
       {"filled", titled("filled", "Hides what lies beneath: glass, wheels.", word(paper))},
       {"when", condition()}});
}

Json lines() {
  std::vector<Key> views;
  for (const Word<View>& view : body::view_words()) {
    Json value = list_of({{"$ref", "#/$defs/line"}});
    if (view.value == View::right) {
      value.update(map_of(
          {{"mirror", titled("mirror", "The same as on the left.", word(body::word(View::left))),
            Need::required}}));
      value["type"] = {"array", "object"};
    }
    views.push_back({std::string(view.word),
                     titled(view.word, fmt::format("Drawn in {}.", meaning(view.value)), value)});
  }
  Json all = map_of(views);
  const std::string left(body::word(View::left)), right(body::word(View::right));
  all["if"] = {{"required", {right}}, {"properties", {{right, {{"type", "object"}}}}}};
  all["then"] = {{"required", {left}}};
  return titled("lines", "Line work without a zone: outline, shut lines, glass, lamps, wheels.",
                all);
}

Json drawn() {
  std::vector<Key> layers;
  for (const Word<Layer>& layer : body::layer_words()) {
    std::vector<Key> views;
    for (const Word<View>& view : body::view_words())
      if (layer.value != Layer::skin || view.value != View::frame)
        views.push_back({std::string(view.word), path()});
    layers.push_back(
        {std::string(layer.word),
         titled(layer.word, fmt::format("Outlines {}.", meaning(layer.value)), map_of(views))});
  }
  return titled("drawn", "Where the zone shows, by sheet and view.", map_of(layers));
}

Json span() {
  std::vector<Key> runs;
  for (const Word<Axis>& axis : axes)
    runs.push_back({std::string(axis.word), coordinates(2, "[least, greatest] in mm.")});
  return titled("span", "An extent that no outline tells.", map_of(runs), {{{"y", {-720, -650}}}});
}

Json spans_where_needed() {
  Json all = Json::array();
  for (const Word<Axis>& axis : axes) {
    Json blind = Json::array();  // views without that axis
    for (const Word<View>& view : body::view_words())
      if (!shows(view, axis.value)) blind.push_back(view.word);
    const Json only_blind = {{"propertyNames", {{"enum", blind}}}};
    Json layers = Json::object();
    for (const Word<Layer>& layer : body::layer_words())
      layers[std::string(layer.word)] = only_blind;
    all.push_back(
        {{"if", {{"properties", {{"drawn", {{"properties", layers}}}}}}},
         {"then",
          {{"required", {"span"}}, {"properties", {{"span", {{"required", {axis.word}}}}}}}}});
  }
  return all;
}

Json without_frame() {
  const auto inside = [](std::string_view key, const Json& value) -> Json {
    return {{"properties", {{std::string(key), value}}}};
  };
  const Json zone =
      inside("drawn", inside(body::word(Layer::structure), inside(body::word(View::frame), false)));
  return inside("zones", {{"additionalProperties", zone}});
}

}  // namespace tinworm::schema
