// The car itself: zones with their tints and textures, line work, repairs' edges, view names.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

// Draws every view of the sheet and fills `drafting.zones`.
void draw_body(Drafting& drafting);

// Names over the views, an arrow to the front over those that show the car's length.
void draw_view_names(Drafting& drafting);

// Thin dashed circles round the mounts that the near rule looks at.
void draw_circles(Drafting& drafting);

}  // namespace tinworm::scene
