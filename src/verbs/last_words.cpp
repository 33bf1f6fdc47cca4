#include "verbs/last_words.hpp"

#include <new>
#include <system_error>

#include <fmt/format.h>

namespace tinworm::verbs {

std::string last_words(const std::exception& error) {
  if (dynamic_cast<const std::bad_alloc*>(&error) != nullptr) {
    return "tinworm: there is not enough memory (close other programs; where a verb has --jobs, "
           "give --jobs 1)\n";
  }
  const auto* system = dynamic_cast<const std::system_error*>(&error);
  if (system != nullptr && system->code() == std::errc::resource_unavailable_try_again) {
    return "tinworm: the system gives no more threads (close other programs; where a verb has "
           "--jobs, give --jobs 1)\n";
  }
  return fmt::format("tinworm: this should not happen: {}\n", error.what());
}

}  // namespace tinworm::verbs
