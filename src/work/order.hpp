// What comes after what.
#pragma once

#include <string>
#include <vector>

#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Puts tasks in order, numbers them and sets `after`. What is welded before what is coated, since
// heat burns a fresh coat; within that what is sure before what was only judged, then by urgency, a
// task taking over both from what waits for it; then by stage (job.hpp), side and number. What
// waits:
// - cuts in sills: for the bracing; those of one side for those of the other, the sounder side
//   (fewer likely hours) first, so that both are never open at once;
// - of two cut parts that are joined, or of which the plan says that one hides the other, or two
//   layers of one sill: the later stage for the earlier; within a stage the outer for the inner;
// - a cut: for the drains of its part to be opened, and for access to it; protection: for every
// cut. Returns what it had to break: where parts hide each other in a ring, the first in turn goes
// first and a sentence says so.
std::vector<std::string> put_in_order(std::vector<Task>& tasks,
                                      const std::vector<weighing::ZoneFacts>& facts);

}  // namespace tinworm::work
