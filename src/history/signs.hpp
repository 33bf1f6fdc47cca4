// What eye and hand say of a place in two surveys. They tell of rust that goes on, never of how
// much metal went.
#pragma once

#include <string>

#include "rules/rules.hpp"
#include "survey/survey.hpp"

namespace tinworm::history {

// Why the place is worse whatever a gauge says: a hole, metal that gives or breaks, a crack, where
// there was none; a hole, a crack or a pit that has grown. Empty where nothing shows. A pit is
// deeper where the difference is over `pit_error_mm`.
std::string worse_sign(const survey::Spot& then, const survey::Spot& now, double pit_error_mm,
                       const rules::Rules& rules);

// The same where nothing was measured: rust where there was none, rust that has spread.
std::string worse_look(const survey::Spot& then, const survey::Spot& now,
                       const rules::Rules& rules);

bool rusted(const survey::Spot& spot);

}  // namespace tinworm::history
