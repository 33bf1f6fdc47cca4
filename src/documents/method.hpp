// How it was judged: the means, the rules with their sources, the file that all came from.
#pragma once

#include "documents/flow.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

void write_method(Flow& flow, const weighing::Result& result, const work::Plan& plan);

// Room for names and dates of who looked and who received it, with what they sign to.
void write_signatures(Flow& flow, const weighing::Result& result);

}  // namespace tinworm::documents
