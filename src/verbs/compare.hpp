// `tinworm compare`: what became of a car's metal between surveys.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

// Throws CommandError for surveys that can't be set beside one another, all reasons at once.
ExitStatus run(const CompareOptions& options, const Streams& streams);

// Throws CommandError of `verb` with all that keeps surveys from being compared.
void must_compare(const std::string& verb, const std::vector<weighing::Result>& results);

}  // namespace tinworm::verbs
