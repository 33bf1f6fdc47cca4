// `start`: a survey to fill in.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Throws CommandError and output::FileError; never replaces a file.
ExitStatus run(const StartOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
