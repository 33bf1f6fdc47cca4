// SOURCE_DATE_EPOCH (https://reproducible-builds.org): the moment to use in place of the clock.
#pragma once

#include <chrono>
#include <optional>
#include <string>

#include "quantity/date.hpp"

namespace tinworm::verbs {

// None where the environment has none. Throws CommandError of `verb` where it is no number of
// seconds since 1970.
std::optional<std::chrono::sys_seconds> source_date(const std::string& verb);

// For the metadata of a picture or paper, in UTC wherever it is made: "2025-04-12T00:00:00Z". That
// moment where the environment has one, else `otherwise`.
std::string date_of_file(const std::string& verb, std::chrono::sys_seconds otherwise);

// The day that moment has, else today's by the clock, in UTC.
quantity::PartialDate today(const std::string& verb);

}  // namespace tinworm::verbs
