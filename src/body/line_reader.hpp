// Reads the line work of a body plan: outline, shut lines, glass, lamps, wheels.
#pragma once

#include <map>
#include <vector>

#include "body/fields.hpp"

namespace tinworm::body {

std::map<View, std::vector<Line>> read_lines(Context& context, const yaml::Node* node);

}  // namespace tinworm::body
