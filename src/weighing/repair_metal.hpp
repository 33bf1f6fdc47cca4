// What a repair's own readings say of it, held against the repair's own sheet.
#pragma once

#include <optional>
#include <string>

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/gauging.hpp"
#include "weighing/metal_at.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// None: no repair of metal, no readings on it, or no sheet told to hold them against.
std::optional<Judgement> repair_metal(const survey::Repair& repair, const Coating& coating,
                                      const Gauging& gauging, const rules::Rules& rules);

// Whether its own metal is past the limit for load-bearing metal. A new sheet that has gone that
// far can't be relied on, however it is joined.
bool is_past_limit(const Judgement& metal, const rules::Rules& rules);

// "its own metal is down to 66 % of its sheet (0.79 of 1.20 mm)".
std::string wasted_text(const survey::Repair& repair, const Judgement& metal);

}  // namespace tinworm::weighing
