// What a sharp buyer would ask of several surveys side by side. They change no figure.
#pragma once

#include <string_view>
#include <vector>

#include "history/comparison.hpp"
#include "history/year.hpp"
#include "history/zone_history.hpp"

namespace tinworm::history {

// Every kind, in the order in which questions stand: what could make the comparison worthless
// first.
const std::vector<std::string_view>& question_kinds();

// `histories` beside comparison.zones. Places that raise one question between the same two surveys
// are asked about together.
std::vector<Question> questions(const Comparison& comparison, const std::vector<Year>& years,
                                const std::vector<ZoneHistory>& histories,
                                const rules::Rules& rules);

}  // namespace tinworm::history
