// A plan of work in plain words for a terminal: what it may take first, then the tasks in order,
// what could double it, what to buy, what can hurt, and what it all rests on.
#pragma once

#include <string>

#include "output/table.hpp"
#include "output/weigh_text.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::output {

std::string work_text(const weighing::Result& result, const work::Plan& plan,
                      const TextStyle& style = {});

// Many surveys: one line each: means, figures not exceeded in 80 of 100, all that could come on
// top.
std::vector<Column> work_line_columns(const std::string& currency);
Row work_line(const weighing::Result& result, const work::Plan& plan);

// Which rates were changed and from what; where none was, that all are assumptions.
std::string rates_text(const work::Plan& plan);

}  // namespace tinworm::output
