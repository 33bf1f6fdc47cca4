// `tinworm map`: the diagram, as PDF, SVG or PNG.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// A sheet that a body lacks is that survey's mistake on the command line; others are drawn.
ExitStatus run(const MapOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
