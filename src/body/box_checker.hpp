// The part of body/checker.hpp that looks at boxes: sections whose walls must meet in named points.
#pragma once

#include "body/plan.hpp"
#include "yaml/problem.hpp"

namespace tinworm::body {

// Adds what is wrong with the walls of `box`.
void check_box(const Plan& plan, const Box& box, yaml::Problems& problems);

}  // namespace tinworm::body
