// What the plan's boxes keep of their stiffness with what was found on their walls.
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// A spot thins the face of its zone nearest its centre, over its own size; one without place sits
// at mid-length on all walls of its zone, one without size takes a quarter of the box's length. At
// the low end walls that weren't seen have .50 left, and seen ones where nothing was found what the
// look could have missed. Withheld where no wall was seen, the inside of a wall's zone wasn't, or a
// seam in one is rusted. `zones` and `facts` side by side, spots weighed.
BoxResult weigh_box(const body::Box& box, const std::vector<Zone>& zones,
                    const std::vector<ZoneFacts>& facts, const rules::Rules& rules);

}  // namespace tinworm::weighing
