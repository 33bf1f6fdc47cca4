// Is there still a sill? What is left of each box's wall metal at its worst place along it.
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Section left at a place along the box: Σ w t λ / Σ w t over its walls, λ only over the width that
// weak, holed or breaking places cover there (a hole its own size); thin but firm metal counts
// whole: it is to be mended, not gone. At the likely figure only what was found by measure or hand
// counts and stuffing doesn't; at the low end every place at its low end does, and walls whose
// inside wasn't seen are gone over the length of a repair that can't be relied on. Gone: under the
// limit, or, of two layers or more, every one weak, holed or breaking within 150 mm along, each
// place 40 mm or more in its greater direction or of unknown size. Limit and lengths: memory, from
// a practitioner's cases; the question is what he asks first (common practice).
//
// One result for each of the plan's boxes, none where none of its walls is known. Marks the spots
// of sections that are gone or may be, and those on one wall of a box whose others are sound.
std::vector<std::optional<SectionLeft>> sections(const body::Plan& plan, std::vector<Zone>& zones,
                                                 const std::vector<ZoneFacts>& facts,
                                                 const rules::Rules& rules);

}  // namespace tinworm::weighing
