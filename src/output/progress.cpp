#include "output/progress.hpp"

#include <unistd.h>

#include <string>

#include <fmt/format.h>

namespace tinworm::output {
namespace {

void draw(int descriptor, const std::string& text) {
  // A bar that can't be drawn must not stop the work.
  [[maybe_unused]] const ssize_t written = ::write(descriptor, text.data(), text.size());
}

}  // namespace

Progress::Progress(int descriptor, std::size_t total, bool wanted)
    : descriptor_(descriptor),
      total_(total),
      drawn_on_(wanted && total > 1 && ::isatty(descriptor) == 1) {}

Progress::~Progress() {
  wipe();
}

void Progress::show(std::size_t done) {
  const int percent = static_cast<int>(100 * done / total_);
  if (!drawn_on_ || percent == shown_percent_) return;
  shown_percent_ = percent;
  const auto filled = static_cast<std::size_t>(percent / 4);
  draw(descriptor_, fmt::format("\r[{}{}] {} of {}", std::string(filled, '#'),
                                std::string(25 - filled, ' '), done, total_));
}

void Progress::wipe() {
  if (shown_percent_ < 0) return;
  shown_percent_ = -1;
  draw(descriptor_, "\r\033[K");
}

}  // namespace tinworm::output
