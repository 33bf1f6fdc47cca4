// `tinworm check`: the mistakes of surveys with their places, then questions.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run(const CheckOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
