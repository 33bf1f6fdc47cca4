// Rules of YAML 1.2 that libyaml and yaml-cpp both let by, held against the tokens.
#pragma once

#include <optional>
#include <string_view>

#include "yaml/problem.hpp"

namespace tinworm::yaml {

// The first place in `source`, which libyaml has read without a mistake, that YAML 1.2.2 forbids:
//   a comment without a space before it                            (section 6.6)
//   a further line of brackets or quotes no deeper than its key    (sections 7.3 and 7.4; a bracket
//                                                                  that closes may stand there)
//   a hyphen alone inside brackets                                 (section 7.3.3)
//   a block of text that begins with blank lines deeper than it    (section 8.1.1.1)
// Section numbers are from memory.
std::optional<Problem> broken_token_rule(std::string_view source);

}  // namespace tinworm::yaml
