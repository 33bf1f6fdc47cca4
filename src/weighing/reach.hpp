// How far the structure burden could move for each place that is to be opened up.
#pragma once

#include <vector>

#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Fills the two ends of each of `result.open_up`, and puts those first, within what they could
// become, that a mount stands on, then that move the structure burden most, then that take least
// time. Needs zones, burdens and open_up.
void reach(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules);

}  // namespace tinworm::weighing
