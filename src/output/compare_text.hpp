// A comparison over the years in plain words: the largest change first, what is the same in one
// line, what can't be seen any more as plain as what was found, the caution last.
#pragma once

#include <string>

#include "history/comparison.hpp"
#include "output/weigh_text.hpp"

namespace tinworm::output {

std::string compare_text(const history::Comparison& comparison, const TextStyle& style = {});

}  // namespace tinworm::output
