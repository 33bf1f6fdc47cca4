// Cuts that are made only to reach something behind.
#pragma once

#include <vector>

#include "rates/rates.hpp"
#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// A sill membrane lies shut between outer and inner sill: each of its cuts asks for one in the
// outer sill joined to it on its side, a margin wider all round, the piece welded in again after;
// unless the outer goes there anyway, for sure where the inner cut is sure. That may fall short by
// a margin: the outer is then cut so much longer. A task for each cut task that needs one. Hours by
// what a piece with a fold and its weld take, at most those of the outer's whole job.
std::vector<Task> access_tasks(const std::vector<Task>& tasks,
                               const std::vector<weighing::ZoneFacts>& facts,
                               const rates::Rates& rates);

}  // namespace tinworm::work
