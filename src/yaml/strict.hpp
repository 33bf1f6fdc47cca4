// The strict pass: libyaml's events, which refuse much that yaml-cpp lets by, within our limits.
#pragma once

#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "yaml/event.hpp"
#include "yaml/node.hpp"

namespace tinworm::yaml {

// Events of the one document in `source`, which has passed bad_characters() and carries no byte
// order mark. Stops at the first mistake. Reading stops as soon as the nesting passes
// `limits.depth`: libyaml's time grows with the square of the depth, and it looks no further ahead
// than 1024 characters.
tl::expected<std::vector<Event>, Problem> strict_events(std::string_view source,
                                                        const Limits& limits);

}  // namespace tinworm::yaml
