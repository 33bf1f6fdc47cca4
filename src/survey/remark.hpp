// What a survey says beside its zones: the gauge, panel gaps, what else the owner must know, price.
#pragma once

#include <vector>

#include "survey/page.hpp"

namespace tinworm::survey {

MetalGauge read_gauges(Page& page, const yaml::Node& node);
std::vector<Gap> read_gaps(Page& page, const yaml::Node& node);
std::vector<Also> read_also(Page& page, const yaml::Node& node);
Price read_price(Page& page, const yaml::Node& node);

}  // namespace tinworm::survey
