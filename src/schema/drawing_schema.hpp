// What a body plan draws: paths, places, line work and the outlines of zones.
#pragma once

#include "schema/part.hpp"

namespace tinworm::schema {

Json plan_text();  // any text that isn't blank
Json plan_length(double low, double high);
Json coordinate();
Json coordinates(std::size_t count, std::string_view how);  // [x, y, z] or the like
Json path();
Json condition();  // `{steering: right}`

Json line();
Json lines();  // refers to #/$defs/line
Json drawn();  // by layer and view
Json span();   // by axis

// What a zone must say of its extent: an axis that none of its views tells needs its `span`.
Json spans_where_needed();

// `then` where a body is unitary: no zone is drawn in the frame view.
Json without_frame();

}  // namespace tinworm::schema
