// One sheet of a comparison map: the latest body, zones tinted by what was lost.
#pragma once

#include <string>

#include "scene/comparison.hpp"
#include "scene/marked_body.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

// True if a list beside it needs a page of its own, which will be called `overflow_page`.
bool draw_comparison_sheet(Page& page, const Sheet& sheet, const history::Comparison& comparison,
                           const MarkedBody& body, const ComparisonOptions& options,
                           const Measure& measure, const std::string& overflow_page);

// Whether any zone of that sheet got worse, was mended, came into sight or went out of it.
bool changed_on(SheetKind kind, const history::Comparison& comparison);

}  // namespace tinworm::scene
