// Charts of metal left at the places that changed most, in a grid.
#pragma once

#include <vector>

#include "history/comparison.hpp"
#include "quantity/length.hpp"
#include "scene/page.hpp"

namespace tinworm::scene {

constexpr std::size_t most_charts = 6;

// At most so many, the largest change first: read in two surveys or more. What stayed the same only
// where nothing else was read so often.
std::vector<const history::Place*> charted(const history::Comparison& comparison);

// Heading, charts, key to their lines. Draws nothing for no places.
void draw_charts(Page& page, const history::Comparison& comparison,
                 const std::vector<const history::Place*>& places, quantity::Units units,
                 const Area& room, const Measure& measure);

}  // namespace tinworm::scene
