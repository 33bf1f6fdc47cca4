#include "verbs/sink.hpp"

#include <fmt/format.h>

namespace tinworm::verbs {

void Sink::add(std::string_view text) {
  if (to_.path == "-") return streams_.print(text);
  if (text.empty()) return;
  if (!file_) file_.emplace(to_.path);
  file_->add(text);
}

void Sink::finish() {
  if (!file_) return;
  file_->finish();
  streams_.tell(fmt::format("wrote {}\n", to_.path));
}

}  // namespace tinworm::verbs
