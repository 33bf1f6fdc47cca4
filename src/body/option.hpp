// Options of a body: where the steering stands, where the battery. Mounts and lines may belong to
// one choice alone.
#pragma once

#include <map>
#include <string>

#include "body/plan.hpp"

namespace tinworm::body {

// The plan of a car of which this much is told: what belongs to another choice is left out. Of an
// option that isn't told all choices count.
PlanPtr with_options(const PlanPtr& plan, const std::map<std::string, std::string>& fitted);

}  // namespace tinworm::body
