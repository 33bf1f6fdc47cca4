#include "verbs/sink.hpp"

#include <fmt/format.h>

#include "output/whole_file.hpp"

namespace tinworm::verbs {

void Sink::add(const std::string& text) {
  if (to_.path == "-") {
    streams_.print(text);
  } else {
    whole_ += text;
  }
}

void Sink::finish() {
  if (to_.path == "-" || whole_.empty()) return;
  output::write_whole(to_.path, whole_);
  streams_.tell(fmt::format("wrote {}\n", to_.path));
}

}  // namespace tinworm::verbs
