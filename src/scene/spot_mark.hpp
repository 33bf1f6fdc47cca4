// Spots at their size and place.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

// Draws every spot in every view that shows its zone, and fills `drafting.spots`.
//
// A spot stands where its recorded coordinates put it, at its true extent in the colour and texture
// of its step: area means area. Its length lies along the zone's `runs`, its other figure along the
// wider of the zone's other extents. Under 2 mm on paper it is a symbol, said not to be to scale.
// Where its size wasn't recorded, or a coordinate that the view needs, it is an open mark, at the
// middle of the zone in that direction. A station measured sound is a small cross. A repair has no
// mark: its zone's edge tells of it. Views in which the place would lie off its zone leave it to
// the others.
void draw_spots(Drafting& drafting);

}  // namespace tinworm::scene
