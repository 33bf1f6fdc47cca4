// The tasks that one part of the car asks for, with their hours, material and money; not yet in
// order.
#pragma once

#include <optional>
#include <vector>

#include "rates/rates.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// A part's name, number and side, and its job.
Task task_of(const weighing::ZoneFacts& zone, Kind kind);

// To cut: load-bearing metal past the limit by its likely figure (thin, weak or holed), repairs of
// load-bearing metal that can't be relied on, and skin that is holed. Everything else that was
// found is treated; blocked drains are opened. A cut task takes what is treated on the same part
// along.
std::vector<Task> tasks(const weighing::Zone& zone, const weighing::ZoneFacts& facts,
                        const rates::Rates& rates);

// Places of load-bearing metal that weren't felt or measured, likely within the limit and at worst
// past it, and repairs whose joint isn't known: as a task if they must be cut. None: no such place.
std::optional<Task> doubtful(const weighing::Zone& zone, const weighing::ZoneFacts& facts,
                             const rates::Rates& rates);

}  // namespace tinworm::work
