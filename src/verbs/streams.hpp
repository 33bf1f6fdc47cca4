// Where a verb prints: results on standard output, messages on standard error.
#pragma once

#include <string_view>

#include "output/weigh_text.hpp"

namespace tinworm::verbs {

struct Streams {
  int results = 1;  // descriptors
  int messages = 2;
  bool quiet = false;  // only mistakes are told

  // Throws output::FileError where the text can't be written.
  void print(std::string_view text) const;
  // Made safe to show: no file's name or argument in it works a terminal.
  // A mistake or a warning; always told, but to a closed or full standard error.
  void complain(std::string_view text) const;
  // What is merely good to know.
  void tell(std::string_view text) const;

  // As wide as the terminal, else 100 columns; bold headings on a terminal unless `no_colour` or
  // the environment's NO_COLOR says otherwise.
  output::TextStyle style(bool no_colour) const;
};

}  // namespace tinworm::verbs
