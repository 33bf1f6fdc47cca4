// What could double it: what the tasks leave out because nobody knows.
#pragma once

#include <vector>

#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Load-bearing parts that weren't seen or are to be opened up, unless they are cut anyway, each as
// its job of the trade if it is rotten; repairs whose joint isn't known and places only judged, as
// cuts if they can't be left. The dearest first.
std::vector<Doubt> doubts(const weighing::Result& result,
                          const std::vector<weighing::ZoneFacts>& facts, const Plan& plan);

}  // namespace tinworm::work
