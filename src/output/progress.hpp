// How far a long job is, on a terminal.
#pragma once

#include <cstddef>

namespace tinworm::output {

// A bar on one line that is drawn again as work is done and wiped at the end. Draws nothing where
// `descriptor` is no terminal, or for a single piece of work. Failure to draw is of no consequence.
class Progress {
 public:
  Progress(int descriptor, std::size_t total, bool wanted);
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  ~Progress();

  void show(std::size_t done);
  void wipe();  // so that a message can stand on the line

 private:
  int descriptor_;
  std::size_t total_;
  bool drawn_on_;
  int shown_percent_ = -1;
};

}  // namespace tinworm::output
