// Reads a body plan from YAML text, and finds a plan by name.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "body/plan.hpp"
#include "yaml/problem.hpp"

namespace tinworm::body {

struct Reading {
  std::optional<Plan> plan;  // none if any problem stands in the way
  yaml::Problems problems;
};

// Shape and meaning of the file; what the drawing itself must keep to is body/checker.hpp.
Reading read_plan(std::string_view yaml);

}  // namespace tinworm::body
