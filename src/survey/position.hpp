// A place in the car's coordinates, as a survey writes it.
#pragma once

#include <string>

#include "survey/page.hpp"

namespace tinworm::survey {

// `{x: 1150, z: 200}` or `x 1150 z 200`.
Position read_position(Page& page, const yaml::Node& node);

std::string position_text(const Position& at);  // "x 1150 mm z 200 mm"; empty where not known

}  // namespace tinworm::survey
