// A file that could not be read or written: which, why, and what to do. Exit status 3.
#pragma once

#include <stdexcept>
#include <string>

namespace tinworm::output {

class FileError : public std::runtime_error {
 public:
  FileError(std::string path, std::string what, std::string cure = {});

  // what(): "path: reason (cure)", the path safe to show.
  const std::string& path() const { return path_; }
  const std::string& reason() const { return reason_; }  // "no such file"
  const std::string& cure() const { return cure_; }      // may be empty

 private:
  std::string path_, reason_, cure_;
};

// What to do about `error`, read or written to; empty where nothing is better than the reason.
std::string cure_of(int error);

// What the system says of `error` (an errno), in plain words where we have better ones than it has.
std::string reason_of(int error);

}  // namespace tinworm::output
