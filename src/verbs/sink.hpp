// Where the results of many surveys go.
#pragma once

#include <optional>
#include <string_view>

#include "output/whole_file.hpp"
#include "verbs/destination.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Results as they come, none of them kept. A file is there whole, and only once all are: nothing is
// written where nothing came.
class Sink {
 public:
  Sink(const Destination& to, const Streams& streams) : to_(to), streams_(streams) {}
  void add(std::string_view text);  // throws output::FileError where it can't be written
  void finish();                    // the same

 private:
  const Destination& to_;
  const Streams& streams_;
  std::optional<output::WholeFile> file_;
};

}  // namespace tinworm::verbs
