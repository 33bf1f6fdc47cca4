// The car, the visit and how the car is kept.
#pragma once

#include "survey/page.hpp"

namespace tinworm::survey {

Car read_car(Page& page, const yaml::Node& node);      // sets page.built
Visit read_visit(Page& page, const yaml::Node& node);  // sets page.visited
Kept read_kept(Page& page, const yaml::Node& node);
std::string read_summary(Page& page, const yaml::Node& node);
std::vector<Tool> read_tools(Page& page, const yaml::Node& node);
// Options of the body plan and what this car has of each.
std::map<std::string, std::string> read_fitted(Page& page, const yaml::Node& node);

}  // namespace tinworm::survey
