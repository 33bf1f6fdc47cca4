// The order in which a practitioner would put the places found.
#pragma once

#include "rules/rules.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// Gives every place with something found its rank, worst first: by what it alone calls for; then,
// from mend up, on, into, near a mount, elsewhere, and by what that mount carries (steering,
// brakes, suspension, belts, towing, tank); then by what it takes from the structure; places of one
// box near one another along it rank as the worst of them, the layer that makes up most of the
// section first; then by area, metal left, zone and name. The order: common practice. Needs
// sections and burdens.
void rank(Result& result, const rules::Rules& rules);

}  // namespace tinworm::weighing
