// What tasks come to together, by PERT.
#pragma once

#include <vector>

#include "work/plan.hpp"

namespace tinworm::work {

// Of each task mean (l + 4 m + h)/6, standard deviation (h - l)/6 (D. G. Malcolm, J. H. Roseboom,
// C. E. Clark, W. Fazar, "Application of a Technique for Research and Development Program
// Evaluation", Operations Research 7 (1959), from memory). Every two tasks are correlated by
// `correlation` r: variance (1 - r) sum s^2 + r (sum s)^2. The sum is taken to be normal: z of
// 80 % is 0.841621.
Total total(const std::vector<Range>& tasks, double correlation);

}  // namespace tinworm::work
