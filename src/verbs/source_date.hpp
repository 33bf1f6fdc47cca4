// SOURCE_DATE_EPOCH (https://reproducible-builds.org): the moment to use in place of the clock.
#pragma once

#include <chrono>
#include <optional>
#include <string>

namespace tinworm::verbs {

// None where the environment has none. Throws CommandError of `verb` where it is no number of
// seconds since 1970.
std::optional<std::chrono::sys_seconds> source_date(const std::string& verb);

}  // namespace tinworm::verbs
