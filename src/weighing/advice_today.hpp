// Advice that depends on the day on which it is asked for. The core knows no clock: who asks says
// what day it is.
#pragma once

#include <vector>

#include "survey/survey.hpp"
#include "weighing/advice.hpp"

namespace tinworm::weighing {

// Whether the visit is yet to come.
std::vector<Advice> advice_today(const survey::Survey& survey, const survey::PartialDate& today);

}  // namespace tinworm::weighing
