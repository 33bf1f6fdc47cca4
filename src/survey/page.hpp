// The survey as it is being read: its text, what the rest depends on, and the problems found.
#pragma once

#include <string_view>
#include <vector>

#include "body/plan.hpp"
#include "quantity/length.hpp"
#include "quantity/refusal.hpp"
#include "survey/survey.hpp"
#include "yaml/node.hpp"
#include "yaml/problem.hpp"

namespace tinworm::survey {

struct Page {
  explicit Page(std::string_view source);

  std::string_view source;
  yaml::Problems problems;
  body::PlanPtr body;  // null where it could not be found: what needs it is then not checked
  quantity::Units units = quantity::Units::mm;
  PhotoFolder photos;
  std::optional<int> built;
  std::optional<PartialDate> visited;
  bool seen_unclear = false;  // how some zone was seen could not be read: say no more about it

  void add(yaml::Problem problem) { problems.push_back(std::move(problem)); }
  void refuse(const yaml::Node& node, const quantity::Refusal& refusal);

  // `part`, a view into the text of a scalar, as a scalar that knows its own place.
  yaml::Node part_of(const yaml::Node& scalar, std::string_view part) const;

  // Where the character `offset` of a scalar's text stands in the file: past an opening quote, and
  // on a later line where the text goes on there. The scalar's own place where it can't be told.
  Place place_in(const yaml::Node& scalar, std::size_t offset) const;

 private:
  std::vector<std::size_t> line_starts_;
};

// The zone of the page's body plan; null without a plan or such a zone.
const body::Zone* plan_zone(const Page& page, int number);

std::vector<std::string_view> between_spaces(std::string_view line);

std::size_t characters(std::string_view text);  // of UTF-8

}  // namespace tinworm::survey
