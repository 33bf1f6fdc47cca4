// The tasks of a plan of work, as text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "output/weigh_text.hpp"
#include "work/plan.hpp"

namespace tinworm::output {

// Bracing, cuts and protection, each with its figures on lines of its own: those that are sure, or
// those that only opening up can show (`judged`).
std::string heavy_tasks(const work::Plan& plan, bool judged, const TextStyle& style);
// Treatments and drains, a row each.
std::string light_tasks(const work::Plan& plan, const TextStyle& style);

// What is done, each cut, weld and sheet, what raises the high figures and what comes before, a
// line each.
std::vector<std::string> task_lines(const work::Task& task, quantity::Units units);
std::string_view urgency_text(work::Urgency urgency);  // "danger: on or near a mounting"
std::string area_text(const work::Range& m2, quantity::Units units);  // "0.03–0.15–0.32 m²"

// "51 outer sill, left"; of the whole car where there is no name.
std::string part_title(int number, const std::string& own, const std::string& name,
                       body::Side side);
std::string stock_text(double mm, quantity::Units units);  // "1.2 mm", "47 thou"

}  // namespace tinworm::output
