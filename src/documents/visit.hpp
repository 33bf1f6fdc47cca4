// The section on the car, the visit and what a cut showed: what was recorded and belongs to no
// part.
#pragma once

#include "documents/flow.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

// For the owner: private facts stand in it. Nothing where the survey tells none of it.
void write_visit(Flow& flow, const weighing::Result& result);

}  // namespace tinworm::documents
