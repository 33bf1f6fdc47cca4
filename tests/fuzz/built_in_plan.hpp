// The first built-in body plan, read once.
#pragma once

#include <memory>

#include "body/built_in.hpp"
#include "body/reader.hpp"

namespace tinworm {

inline const body::PlanPtr& built_in_plan() {
  static const body::PlanPtr read = std::make_shared<body::Plan>(
      body::read_plan(body::built_in_plans().front().yaml).plan.value());
  return read;
}

}  // namespace tinworm
