// The tasks of a plan of work, as text.
#pragma once

#include <string>

#include "output/weigh_text.hpp"
#include "work/plan.hpp"

namespace tinworm::output {

// Bracing, cuts and protection, each with its figures on lines of its own.
std::string heavy_tasks(const work::Plan& plan, const TextStyle& style);
// Treatments and drains, a row each.
std::string light_tasks(const work::Plan& plan, const TextStyle& style);

// "51 outer sill, left"; of the whole car where there is no name.
std::string part_title(int number, const std::string& own, const std::string& name,
                       body::Side side);
std::string stock_text(double mm, quantity::Units units);  // "1.2 mm", "47 thou"

}  // namespace tinworm::output
