// The body plan that a command line names.
#pragma once

#include <string>

#include "body/plan.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Null where its file has mistakes, which are then told. Throws CommandError of `verb`, with the
// nearest name, where there is no such plan.
body::PlanPtr named_plan(const std::string& verb, PlanShelf& plans, const std::string& name,
                         const Streams& streams);

}  // namespace tinworm::verbs
