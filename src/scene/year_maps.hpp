// The structure as each survey found it, small and side by side, tinted by the ordinary steps.
#pragma once

#include <vector>

#include "history/comparison.hpp"
#include "scene/page.hpp"

namespace tinworm::scene {

constexpr std::size_t most_year_maps = 6;

// Which surveys are shown: all, or of many the first, the last and evenly between.
std::vector<std::size_t> years_shown(std::size_t surveys);

// Heading, maps with date and verdict over each, key of the steps. Returns the height used.
double draw_year_maps(Page& page, const history::Comparison& comparison, const Area& room,
                      const Measure& measure);

}  // namespace tinworm::scene
