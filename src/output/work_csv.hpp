// A plan of work as CSV: a row for each task, then the totals, then what could come on top. Figures
// as reckoned, to 1e-6.
#pragma once

#include <string>

#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::output {

std::string work_csv_header();
std::string work_csv_rows(const weighing::Result& result, const work::Plan& plan);

}  // namespace tinworm::output
