// Whether what was read of a survey can be true together, where each figure alone can.
#pragma once

#include "survey/page.hpp"
#include "survey/survey.hpp"

namespace tinworm::survey {

// Adds a problem for each hole that is larger than the rust it is recorded in, and for holes that
// are so together.
void check_sense(Page& page, const Survey& survey);

}  // namespace tinworm::survey
