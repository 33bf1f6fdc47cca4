// `tinworm field-sheet`: paper to take under the car, as PDF.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run(const FieldSheetOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
