// What nobody saw and why, as prominent as what was found; what could come of it; what is still to
// be asked.
#pragma once

#include "documents/flow.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

void write_unseen(Flow& flow, const weighing::Result& result);
void write_questions(Flow& flow, const weighing::Result& result);

}  // namespace tinworm::documents
