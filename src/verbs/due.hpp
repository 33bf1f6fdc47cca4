// `tinworm due`: the cars of an archive by when they are next to be looked at.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run(const DueOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
