// The plate that a zone's number stands on: how bad the zone's worst place is, so that the sheet is
// graded zone by zone while inked area means area.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

// In the colour of the zone's step, white where it is sound, hatched where it wasn't seen; its edge
// broken where that was judged. Plain paper where the zones are dressed to tell something else.
// Returns the colour of the number on it.
Colour draw_plate(Drafting& drafting, const weighing::Zone& zone, const Area& plate);

// The same for the key.
std::vector<Item> plate(weighing::Step step, bool measured, const Area& area);

}  // namespace tinworm::scene
