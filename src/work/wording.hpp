// What is done to a part, in words without figures.
#pragma once

#include <string>
#include <vector>

#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Each way of mending with its places; what was only judged last.
std::string cut_words(const std::vector<Cut>& cuts, const weighing::ZoneFacts& zone);

}  // namespace tinworm::work
