// Surveys over the years: weighed surveys in, all that any output needs out.
#pragma once

#include <vector>

#include "history/comparison.hpp"
#include "rules/rules.hpp"

namespace tinworm::history {

// Pure. `results` in any order, all weighed by `rules`; two or more that refusals() has nothing
// against. Same names in the same zone are compared; a near miss is asked about, never guessed.
Comparison compare(std::vector<weighing::Result> results, const rules::Rules& rules);

}  // namespace tinworm::history
