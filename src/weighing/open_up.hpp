// What to open up before relying on the car, and what it could become.
#pragma once

#include <vector>

#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Sets open_up_first and open_up, and adds its reasons after the verdict's: too little of the main
// structure seen; a main zone under a mounting not seen; what hides behind a weak or holed place or
// a bad repair not seen; a box or layered main zone whose inside wasn't seen; a place only judged
// that could be thin; a place that may be near a mounting; a thick coat or more than one sheet on
// load-bearing metal; what was found by tapping alone. Needs zones, ranks, coverage and verdict.
void find_open_up(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules);

}  // namespace tinworm::weighing
