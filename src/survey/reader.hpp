// Reads a survey from YAML text.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "survey/survey.hpp"
#include "yaml/problem.hpp"

namespace tinworm::survey {

// Finds the body plan a survey names: "two-door-saloon 1" or a path. On failure the reason and the
// cure, without place. Given by the caller, so that this room opens no file.
using FindBody = std::function<tl::expected<body::PlanPtr, yaml::Problem>(std::string_view name)>;

struct Reading {
  std::optional<Survey> survey;  // none if any problem stands in the way
  yaml::Problems problems;       // all of them, in order of place
};

// Long and one-line findings give the same model. Everything is checked that needs no other file
// than the plan: shape, words, ranges, zones the plan lacks, findings in hidden zones, names twice.
Reading read_survey(std::string_view yaml, const FindBody& find_body);

}  // namespace tinworm::survey
