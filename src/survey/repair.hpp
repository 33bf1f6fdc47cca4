// Repairs of a zone, written long or on one line.
#pragma once

#include <vector>

#include "survey/page.hpp"

namespace tinworm::survey {

std::vector<Repair> read_repairs(Page& page, const yaml::Node& node, const body::Zone* zone);

}  // namespace tinworm::survey
