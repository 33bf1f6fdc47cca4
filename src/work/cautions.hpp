// What can hurt someone in the tasks of a plan. Common practice of the trade, but where a source is
// named in cautions.cpp.
#pragma once

#include <vector>

#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Only those that the tasks call for, each with the tasks it is for.
std::vector<Caution> cautions(const std::vector<Task>& tasks, const weighing::Result& result,
                              const std::vector<weighing::ZoneFacts>& facts);

}  // namespace tinworm::work
