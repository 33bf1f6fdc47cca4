// What the program ends with. Verdicts don't change it.
#pragma once

namespace tinworm::verbs {

enum ExitStatus : int {
  done = 0,
  errors_in_files = 1,  // the survey, plan or rules have errors
  wrong_command = 2,    // the command line is wrong
  file_trouble = 3,     // a file could not be read or written
};

}  // namespace tinworm::verbs
