// What a reader of YAML meets, one after the other, before a tree is made of it.
#pragma once

#include <string>
#include <vector>

#include "yaml/problem.hpp"

namespace tinworm::yaml {

struct Event {
  enum class Kind { scalar, alias, sequence_start, map_start, end };
  Kind kind = Kind::scalar;
  Place place;
  std::string text = {};  // scalar
  bool quoted = false;    // scalar
  bool flow = false;      // sequence_start, map_start
  int anchor = 0;         // ordinal of the anchor set here or named by an alias, from 1; 0: none
  int target = -1;        // alias: index of the event that set the anchor
};

// Written as nothing: no text at all, `~` or `null`, without quotes (YAML 1.2 section 10.2.1.1).
bool means_nothing(const Event& event);

}  // namespace tinworm::yaml
