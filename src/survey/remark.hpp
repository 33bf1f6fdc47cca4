// What a survey says beside its zones: the gauge, panel gaps, what else the owner must know, price.
#pragma once

#include <vector>

#include "survey/page.hpp"

namespace tinworm::survey {

MetalGauge read_gauges(Page& page, const yaml::Node& node);
std::vector<Gap> read_gaps(Page& page, const yaml::Node& node);
std::vector<Also> read_also(Page& page, const yaml::Node& node);
// `zones` has every zone that may be named: those of the plan and the survey's own.
std::vector<Opened> read_opened(Page& page, const yaml::Node& node, const Survey& survey);
Price read_price(Page& page, const yaml::Node& node);

}  // namespace tinworm::survey
