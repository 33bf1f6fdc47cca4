// `tinworm check`: the mistakes of surveys with their places, then the questions of a careful
// surveyor, each with why it matters.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run(const CheckOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
