// Where the results of many surveys go.
#pragma once

#include <string>

#include "verbs/destination.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Results as they come where they go to standard output, else kept until all are there: a file is
// written whole.
class Sink {
 public:
  Sink(const Destination& to, const Streams& streams) : to_(to), streams_(streams) {}
  void add(const std::string& text);
  void finish();  // throws output::FileError where the file can't be written

 private:
  const Destination& to_;
  const Streams& streams_;
  std::string whole_;
};

}  // namespace tinworm::verbs
