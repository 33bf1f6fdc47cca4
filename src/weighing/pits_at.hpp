// What the pits at a spot leave of its metal, and what it weighs at most beside them.
#pragma once

#include <optional>

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/gauging.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// Sets what `metal` says of pits, from its readings where there are any, and returns the most that
// the place weighs; none without pits or a baseline. `area_mm2`: of the rusted place, for the
// deepest pit over it; none where it has no size.
std::optional<rules::Envelope> pits_at(const survey::Spot& spot, const ZoneBaseline& baseline,
                                       const rules::Rules& rules, std::optional<double> area_mm2,
                                       MetalLeft& metal);

}  // namespace tinworm::weighing
