// A comparison as JSON. Keys stay once published; new ones may join. Lengths mm, rates mm a year,
// times years; a value that can't be given is null; a life without an upper end has
// "unbounded": true.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "history/comparison.hpp"

namespace tinworm::output {

nlohmann::ordered_json compare_json(const history::Comparison& comparison);

}  // namespace tinworm::output
