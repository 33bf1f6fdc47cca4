// What to open up before relying on the car, and what it could become.
#pragma once

#include <vector>

#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Sets open_up_first, open_up and open_reasons: too little of the main structure seen; a main zone
// not seen, or one that a mount stands on or loads; a mount's part seen only through its coat and
// neither felt, measured nor scoped; what hides behind a weak or holed place or a bad repair not
// seen; what was found by tapping alone; a place only judged that could be thin; one that may be on
// a mount or in a part that takes its load; what was measured but reaches a worse verdict at its
// low end; a thick coat; more than one sheet; readings that contradict each other; an assumed
// sheet; a repair whose joint isn't known; a gap that moves; an inside not seen beside a thin place
// or under a mount. Each with the verdict it could bring. Needs zones, ranks, coverage and verdict.
void find_open_up(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules);

}  // namespace tinworm::weighing
