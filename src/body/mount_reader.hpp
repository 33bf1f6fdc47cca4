// Reads the mounts of a body plan: where suspension, steering, belts and the like hold on.
#pragma once

#include <vector>

#include "body/fields.hpp"

namespace tinworm::body {

// A mount with `mirrored: true` comes out twice, the left or written one first.
std::vector<Mount> read_mounts(Context& context, const yaml::Node* node);

}  // namespace tinworm::body
