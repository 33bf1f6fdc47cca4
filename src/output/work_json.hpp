// A plan of work as JSON: kind "work". Figures as reckoned, to 1e-6; keys stay once published.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::output {

nlohmann::ordered_json work_json(const weighing::Result& result, const work::Plan& plan);

}  // namespace tinworm::output
