// Reads the load-carrying sections of a body plan.
#pragma once

#include <vector>

#include "body/fields.hpp"

namespace tinworm::body {

std::vector<Box> read_boxes(Context& context, const yaml::Node* node);

}  // namespace tinworm::body
