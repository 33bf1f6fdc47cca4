// Says in plain words what libyaml found wrong.
#pragma once

#include <string>
#include <string_view>

#include "yaml/problem.hpp"

namespace tinworm::yaml {

struct SyntaxMistake {
  std::string context;  // libyaml's "while parsing a block mapping"
  Place context_place;  // line 0 if it names none
  std::string problem;  // libyaml's "did not find expected key"
  Place place;
  Place long_quote_from;  // the last quoted text over several lines: where it opened
  Place long_quote_to;    // and where it closed; line 0 if there is none
};

// Every message that libyaml 0.2.5's scanner and parser can give has its own wording here; one that
// a later version adds is passed on in its own words.
Problem explain(const SyntaxMistake& mistake, std::string_view source);

}  // namespace tinworm::yaml
