// What to open up, by what one does to open it: candidates that one opening shows are one line of
// advice.
#pragma once

#include <string>
#include <vector>

#include "weighing/result.hpp"

namespace tinworm::weighing {

struct Look {
  std::vector<const OpenUp*> shows;  // in the order of open_up, never empty; points into the result
  std::string opening;               // "left carpet and mat up"; empty: none is named
  int minutes = 0;                   // once for all that it shows; 0: not known
  Verdict could_become = Verdict::not_known;  // the worst of them
  bool carries = false;  // a mount of brakes, steering, suspension, belts or towing on one of them
  double moves = 0;      // how far opening each could move the structure burden's ends, summed
};

// By the verdict that it could bring, then what a mount stands on, then how far it moves the
// structure burden, then by minutes.
std::vector<Look> looks(const Result& result);

}  // namespace tinworm::weighing
