// An output made again as its record says, from the inputs at hand.
#pragma once

#include <memory>
#include <string>

#include "verbs/carried.hpp"

namespace tinworm::verbs {

struct AtHand {        // as named on the command line; all but the survey may be empty
  std::string survey;  // its path
  std::string sha256;  // of its bytes
  std::string output;  // other inputs may lie beside it too
  std::string rules, rates, panels;
};

struct DrawnAgain {
  std::shared_ptr<const OpenFile> file;  // null where it couldn't be made:
  std::string why;                       // a sentence
  std::string messages;                  // what the verb said, mistakes with their places
};

// Rules, rates and the other surveys of a comparison are looked for by name and fingerprint beside
// the survey, beside the output and in the folder the program runs in, unless named. Only what
// are_harmless() lets through is run. Throws output::FileError.
DrawnAgain drawn_again(const Record& record, const AtHand& at_hand);

}  // namespace tinworm::verbs
