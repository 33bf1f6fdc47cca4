// `tinworm schema`: the JSON Schema of a kind of file.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

ExitStatus run(const SchemaOptions& options, const Streams& streams);

}  // namespace tinworm::verbs
