// From the words of a command line to an exit status: what went wrong is told on
// `streams.messages`.
#pragma once

#include <string>
#include <vector>

#include "verbs/exit_status.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run_command(const std::vector<std::string>& arguments, Streams streams);

}  // namespace tinworm::verbs
