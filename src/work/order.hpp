// What comes after what.
#pragma once

#include <vector>

#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Puts tasks in order, numbers them and sets `after`. What is welded before what is coated, since
// heat burns a fresh coat; within that by urgency, a task taking over that of what
// waits for it; then by stage (job.hpp), side and number. What waits:
// - cuts in sills: for the bracing; those of one side for those of the other, the sounder side
//   (fewer likely hours) first, so that both are never open at once;
// - of two cut parts of which the plan says that one hides the other, or two layers of one sill:
//   the later stage for the earlier; within a stage the outer for the inner;
// - a cut: for the drains of its part to be opened; protection: for every cut.
// Where the plan's zones hide each other in a ring, the most urgent goes first.
void put_in_order(std::vector<Task>& tasks, const std::vector<weighing::ZoneFacts>& facts);

}  // namespace tinworm::work
