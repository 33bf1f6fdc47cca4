// `tinworm report`: the owner's paper, as PDF.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run(const ReportOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
