// How it was judged: the means, the rules with their sources, the file that all came from.
#pragma once

#include "documents/flow.hpp"
#include "quantity/length.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

// Constants stand in the units of the rules file, whatever `units`.
void write_method(Flow& flow, const weighing::Result& result, const work::Plan& plan,
                  quantity::Units units);

// Room for names and dates of who looked and who received it, with what they sign to.
void write_signatures(Flow& flow, const weighing::Result& result);

}  // namespace tinworm::documents
