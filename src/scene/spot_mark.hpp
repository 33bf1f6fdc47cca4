// Spots at their size and place.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

// Draws every spot in every view that shows its zone, and fills `drafting.spots`.
//
// A spot stands where its recorded coordinates put it. Where a view needs a coordinate that wasn't
// recorded, it stands at the middle of the zone in that direction and its edge is dashed. At least
// 2 mm on paper. Its length lies along the zone's `runs`, its other figure along the wider of the
// zone's other extents. A station measured sound is a small cross. A repair has no mark: its zone's
// edge tells of it. Views in which the place would lie off its zone leave it to the others.
void draw_spots(Drafting& drafting);

}  // namespace tinworm::scene
