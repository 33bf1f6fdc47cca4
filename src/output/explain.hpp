// The whole chain of one zone, from the readings to its share of the burden.
#pragma once

#include <string>

#include "output/weigh_text.hpp"
#include "weighing/result.hpp"

namespace tinworm::output {

std::string explain_zone(const weighing::Result& result, const weighing::Zone& zone,
                         const TextStyle& style = {});

}  // namespace tinworm::output
