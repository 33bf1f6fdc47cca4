// What several holes of one place come to together: the largest alone must never be all.
#pragma once

#include <vector>

#include "quantity/length.hpp"

namespace tinworm::weighing {

// The least rectangle that holds them all in a row along the zone. `holes` has one at least.
quantity::Size in_a_row(const std::vector<quantity::Size>& holes);

double area_mm2(const std::vector<quantity::Size>& holes);  // of all together

// The longest side of any of them.
double largest_mm(const std::vector<quantity::Size>& holes);

}  // namespace tinworm::weighing
