// The car, the visit and how the car is kept.
#pragma once

#include "survey/page.hpp"

namespace tinworm::survey {

Car read_car(Page& page, const yaml::Node& node);      // sets page.built
Visit read_visit(Page& page, const yaml::Node& node);  // sets page.visited
Kept read_kept(Page& page, const yaml::Node& node);

}  // namespace tinworm::survey
