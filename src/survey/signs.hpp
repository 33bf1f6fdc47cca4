// What hand, tap and probe say of a place, in the words that steps, boxes, history, questions and
// outputs share: whatever is said to give or break does so for all of them.
#pragma once

#include "survey/survey.hpp"

namespace tinworm::survey {

bool holed(const Spot& spot);      // a hole, by its size or its word
bool gives(const Spot& spot);      // under the thumb, or crunches under a tap
bool breaks(const Spot& spot);     // under the thumb, or lets the probe in
bool gives_way(const Spot& spot);  // gives or breaks

}  // namespace tinworm::survey
