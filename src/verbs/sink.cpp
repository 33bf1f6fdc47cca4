#include "verbs/sink.hpp"

#include <fmt/format.h>

#include "yaml/characters.hpp"

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
  streams_.tell(fmt::format("wrote {}\n", yaml::shown(to_.path)));
}

}  // namespace tinworm::verbs
