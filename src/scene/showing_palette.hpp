// Colours and textures of comparison maps. A ramp of its own, laid out in OKLab, that nobody takes
// for that of a survey: from sand (reads thicker) over near-white (nothing shown) to plum and
// aubergine (lost much), lightness falling by even steps along the loss. Nothing is green or blue.
// What the ramp can't tell stands on paper or on cool grey, by its texture.
#pragma once

#include <vector>

#include "scene/colour.hpp"
#include "scene/page.hpp"
#include "scene/showing.hpp"
#include "scene/texture.hpp"

namespace tinworm::scene {

Colour strong(Showing showing);   // of a place
Colour pale(Showing showing);     // of a whole zone
Colour marking(Showing showing);  // of the texture on a zone
Texture texture_of(Showing showing);

Item pale_fill(Showing showing, const std::vector<Polyline>& shape);
Item strong_fill(Showing showing, const std::vector<Polyline>& shape);

}  // namespace tinworm::scene
