// Reads the zones of a body plan.
#pragma once

#include <set>
#include <vector>

#include "body/fields.hpp"

namespace tinworm::body {

struct Zones {
  std::vector<Zone> zones;  // by number; those with mistakes are there too
  std::set<int> named;      // all numbers the plan has
};

Zones read_zones(Context& context, const yaml::Node* node);

}  // namespace tinworm::body
