// The second reading, by yaml-cpp, which must find what the strict pass found.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "yaml/event.hpp"

namespace tinworm::yaml {

// The first place where yaml-cpp reads `source` otherwise than `strict` tells; none if both agree
// throughout. What two readers take differently is refused rather than guessed at.
std::optional<Problem> disagreement(std::string_view source, const std::vector<Event>& strict);

}  // namespace tinworm::yaml
