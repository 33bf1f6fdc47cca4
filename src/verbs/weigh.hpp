// `tinworm weigh`: what surveys come to.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/rules_file.hpp"
#include "verbs/streams.hpp"
#include "verbs/surveys.hpp"
#include "weighing/result.hpp"

namespace tinworm::verbs {

// Throws CommandError for a zone to explain that a body lacks.
ExitStatus run(const WeighOptions& options, const Streams& streams);

// Of a survey that was read well; with its file and fingerprint, and the rules where they change
// anything.
weighing::Result weighed(const Loaded& loaded, const RulesInForce& rules);

// Without a survey: it says which rules are changed, for lists of many.
weighing::Result of_rules_alone(const RulesInForce& rules);

}  // namespace tinworm::verbs
