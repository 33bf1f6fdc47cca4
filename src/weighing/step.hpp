// The steps of a place, by rule from its metal and its signs.
#pragma once

#include <optional>

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// By metal left alone; a value on a limit counts to its sound side (1e-9 to spare).
Step step_of(double metal_left, bool rusted, const rules::Rules& rules);

// Whether a pit leaves less than the limit, and whether it leaves nothing.
bool past_pit_limit(double pit_left, const rules::Rules& rules);
bool pitted_through(double pit_left);

// The least a place can be whatever its metal: holed by a hole or where metal breaks; weak where it
// gives (survey/signs.hpp), is pitted through, or is cracked near a mounting; thin where cracked or
// pitted past the limit. `pit_left` as a fraction of the sheet; none without a pit.
Step least_step(const survey::Spot& spot, std::optional<double> pit_left, bool near,
                const rules::Rules& rules);

// Piecewise linear through (1, 0), (sound, .10), (limit, .30), (weak, .75), (0, 1).
double damage(double metal_left, const rules::Rules& rules);

}  // namespace tinworm::weighing
