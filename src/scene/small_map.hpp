// The car on part of a page: its structure, or its skin where the plan has no more, with what was
// found, the worst three ringed, and a key in a row under it.
#pragma once

#include "scene/page.hpp"
#include "weighing/result.hpp"

namespace tinworm::scene {

// As large as `room` holds; returns the height used, 0 where the room is too small for it.
double draw_small_map(Page& page, const weighing::Result& result, const Area& room,
                      const Measure& measure);

}  // namespace tinworm::scene
