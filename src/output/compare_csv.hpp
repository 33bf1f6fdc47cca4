// A comparison for a spreadsheet: a row for each zone, spot and survey.
#pragma once

#include <string>

#include "history/comparison.hpp"

namespace tinworm::output {

// With its header. `change` is against the survey before, `change_overall` since the first of the
// place's history; what is of the place as a whole is repeated in each of its rows. Zones without a
// spot have a row for each survey too.
std::string compare_csv(const history::Comparison& comparison);

}  // namespace tinworm::output
