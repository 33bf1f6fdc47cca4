// The steps of a place, by rule from its metal and its signs.
#pragma once

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// By metal left alone; a value on a limit counts to its sound side (1e-9 to spare).
Step step_of(double metal_left, bool rusted, const rules::Rules& rules);

// The least a place can be whatever its metal: holed by a hole or where metal breaks; weak where it
// gives (survey/signs.hpp), is pitted through, or is cracked near a mounting; thin where cracked or
// pitted past the limit.
Step least_step(const survey::Spot& spot, const MetalLeft& metal, bool near,
                const rules::Rules& rules);

// Piecewise linear through (1, 0), (sound, .10), (limit, .30), (weak, .75), (0, 1).
double damage(double metal_left, const rules::Rules& rules);

}  // namespace tinworm::weighing
