// What changed since earlier surveys, as a section of the owner's paper: what got worse with its
// rate and how long it has, then the rest in groups.
#pragma once

#include "documents/flow.hpp"
#include "history/comparison.hpp"
#include "quantity/length.hpp"

namespace tinworm::documents {

void write_since(Flow& flow, const history::Comparison& comparison, quantity::Units units);

}  // namespace tinworm::documents
