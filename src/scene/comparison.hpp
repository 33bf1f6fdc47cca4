// What became of a car's metal, drawn: maps of what changed, small maps of every year, charts of
// metal left, lists. As calm as the map of one survey, with colours of its own; nothing private.
#pragma once

#include <string>
#include <vector>

#include "history/comparison.hpp"
#include "quantity/length.hpp"
#include "scene/page.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

struct ComparisonOptions {
  Paper paper = Paper::a4;
  quantity::Units units = quantity::Units::mm;
};

// The map of the structure, of a separate frame, of the skin if anything changed on it; the years
// side by side with charts; lists of changes and questions.
std::vector<Page> comparison_pages(const history::Comparison& comparison,
                                   const ComparisonOptions& options, const Measure& measure);

// The map of one kind alone: the first page, for pictures of one page. More pages where a body is
// spread over several, or a list finds no room beside it. Empty if the body draws no zone there.
std::vector<Page> comparison_map(const history::Comparison& comparison, SheetKind kind,
                                 const ComparisonOptions& options, const Measure& measure);

// What every file of such a picture says of itself in its metadata. Nothing private.
std::string picture_description(const history::Comparison& comparison);

}  // namespace tinworm::scene
