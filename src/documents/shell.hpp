// The shell as a whole: how much the rust weighs, what its boxes keep of their stiffness, how gaps
// move between wheels and lift.
#pragma once

#include "documents/flow.hpp"
#include "quantity/length.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

void write_shell(Flow& flow, const weighing::Result& result, quantity::Units units);

}  // namespace tinworm::documents
