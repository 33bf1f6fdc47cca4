// The method: a survey and the rules in, all that any output needs out.
#pragma once

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// Pure: the same survey and rules give the same result. `survey.body` must be set. The caller fills
// `file`, `sha256` and the name of the rules. The method is described in DEVELOPERS.md.
Result weigh(const survey::Survey& survey, const rules::Rules& rules);

}  // namespace tinworm::weighing
