// Zones by their names: "left outer sill", "outer sill, left", "rocker left".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "body/plan.hpp"

namespace tinworm::survey {

// The one zone of the plan whose name, either word for it, and side these are, in any order and
// case; none where no zone or several are called so.
std::optional<int> zone_named(const body::Plan& plan, std::string_view text);

// "left outer sill (51)" of the zone whose name is nearest to the text or shares most words with
// it; empty where none does.
std::string nearest_zone(const body::Plan& plan, std::string_view text);

}  // namespace tinworm::survey
