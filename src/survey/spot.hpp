// A spot written long: a place in a zone where something was found or measured.
#pragma once

#include "survey/page.hpp"

namespace tinworm::survey {

// `zone` is null for an own zone and where the plan is not known. A spot whose name is a station of
// the zone stands there unless `at` says otherwise.
// `complete` is false where parts of a line could not be read: what they may have said is not
// missed.
Spot read_spot(Page& page, const yaml::Node& node, const body::Zone* zone, bool complete = true);

}  // namespace tinworm::survey
