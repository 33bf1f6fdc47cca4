// `tinworm listing`: what goes with the car when it is sold, as PDF, SVG or PNG.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Throws CommandError for a sheet that the body lacks, and where a survey without its surveyor's
// name is to be signed.
ExitStatus run(const ListingOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
