// Why a piece of text is not a quantity. The readers add the place and make a Problem of it.
#pragma once

#include <string>

namespace tinworm::quantity {

struct Refusal {
  std::string what;     // "a length is a number and a unit"
  std::string allowed;  // "0.82 mm, 32 thou, 1.5 in"
  std::string cure;     // may be empty
  int offset = 0;       // characters from the start of the text to the mistake
};

}  // namespace tinworm::quantity
