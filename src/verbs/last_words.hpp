// What the program says of an error that nobody nearer knew how to deal with.
#pragma once

#include <exception>
#include <string>

namespace tinworm::verbs {

// A line. Want of memory or of threads is the machine's and has a cure; anything else is our own
// mistake. Exit status 3.
std::string last_words(const std::exception& error);

}  // namespace tinworm::verbs
