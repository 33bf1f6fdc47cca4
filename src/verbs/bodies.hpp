// `tinworm bodies`: the body plans, and the zones of one.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Throws CommandError for a body there is none of.
ExitStatus run(const BodiesOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
