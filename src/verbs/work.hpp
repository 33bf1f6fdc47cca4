// `tinworm work`: what to do to a car, in what order, and what it may take.
#pragma once

#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/rates_file.hpp"
#include "verbs/streams.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::verbs {

ExitStatus run(const WorkOptions& options, const Streams& streams);

// Of a result; with the name of the rates where they change anything.
work::Plan planned(const weighing::Result& result, const RatesInForce& rates);

}  // namespace tinworm::verbs
