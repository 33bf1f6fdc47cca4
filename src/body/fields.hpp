// Single values of a body plan: words, figures, places, zone numbers. Each adds a problem, with the
// value's place, where the text is not what it should be, and then returns something harmless.
//
// `what` is how messages call the value: "the sheet of zone 51". A null node (a key left out, which
// MapReader has already reported if it was required) is passed over in silence.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>
#include <tl/expected.hpp>

#include "body/limits.hpp"
#include "body/plan.hpp"
#include "body/words.hpp"
#include "quantity/refusal.hpp"
#include "yaml/node.hpp"

namespace tinworm::body {

struct ZoneReference {  // a zone named somewhere in the plan, to be looked up when all are read
  int number = 0;
  std::string what;
  yaml::Place place;
};

struct Context {
  std::string_view source;
  yaml::Problems& problems;
  Construction construction = Construction::unitary;
  std::vector<ZoneReference> references = {};
  std::size_t points_drawn = 0;  // of all outlines that are written out

  void refuse(yaml::Problem problem) { problems.push_back(std::move(problem)); }
  yaml::Place inside(const yaml::Node& scalar, std::size_t offset) const;
};

std::string text(Context& context, const yaml::Node* node, std::string_view what);
int whole_number(Context& context, const yaml::Node* node, std::string_view what, int low,
                 int high);
double length_mm(Context& context, const yaml::Node* node, std::string_view what, Range allowed);
double sheet_mm(Context& context, const yaml::Node* node, std::string_view what);
double area_m2(Context& context, const yaml::Node* node, std::string_view what);
double coordinate_mm(Context& context, const yaml::Node* node, std::string_view what);
// Lists of exactly `count` coordinates; empty where one is wrong.
std::vector<double> coordinates_mm(Context& context, const yaml::Node* node, std::string_view what,
                                   std::size_t count);
std::optional<geometry::Point3> point3(Context& context, const yaml::Node* node,
                                       std::string_view what);
std::optional<geometry::Interval> interval(Context& context, const yaml::Node* node,
                                           std::string_view what);

// The number in `text` if it is one a zone may have.
std::optional<int> zone_number(std::string_view text);
// Adds the problem itself where `zone_number` finds none.
std::optional<int> zone_number(Context& context, std::string_view text, yaml::Place place,
                               std::string_view what);
int zone(Context& context, const yaml::Node* node, std::string_view what);
std::vector<int> zones(Context& context, const yaml::Node* node, std::string_view what);

// Flattened; none where the path data is wrong, or draws more points than the sheets could show:
// areas of outlines that cross themselves thousands of times would take minutes.
struct Shape {
  std::string path;
  geometry::Outline outline;
};
std::optional<Shape> shape(Context& context, const yaml::Node* node, std::string_view what);

// The items of a list; none and a problem where there is no list.
std::span<const yaml::Node> items(Context& context, const yaml::Node* node, std::string_view what);

void refuse_word(Context& context, const yaml::Node& node, std::string_view what,
                 const std::vector<std::string>& allowed);

template <typename Value>
std::optional<Value> one_of(Context& context, const yaml::Node* node, std::string_view what,
                            std::span<const Word<Value>> words) {
  if (!node) return {};
  const std::size_t before = context.problems.size();
  const std::string_view word = yaml::scalar(*node, context.problems, what);
  if (context.problems.size() > before) return {};
  if (const auto value = value_of(word, words)) return value;
  std::vector<std::string> allowed;
  for (const Word<Value>& entry : words) allowed.emplace_back(entry.word);
  refuse_word(context, *node, what, allowed);
  return {};
}

}  // namespace tinworm::body
