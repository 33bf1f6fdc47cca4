// Whether an output belongs to a survey as it stands: its record is read, the output made again
// from the survey, and the two compared byte for byte. What an output says of itself proves
// nothing.
#pragma once

#include <string>

#include "verbs/drawn_again.hpp"

namespace tinworm::verbs {

enum class Belonging {
  identical,
  differs,      // it names the survey, but something else is made of it
  not_from_it,  // it names other surveys, or none
  cannot_tell   // no record, another version of the program, or an input not at hand
};

struct Match {
  Belonging belonging = Belonging::cannot_tell;
  std::string text;      // a line for the user, which begins with the output's name and the answer
  std::string messages;  // why it couldn't be made again, where that was tried
};

// `at_hand.output` is the file to look into. Throws output::FileError.
Match match(const AtHand& at_hand);

}  // namespace tinworm::verbs
