// The worst places in words, in the order of their letters.
#pragma once

#include "scene/column.hpp"

namespace tinworm::scene {

// One entry for each letter on the drawing, none besides: name, station, step, figure, how it is
// known, the zone's number. `close`: without what it is near;
// `brief`: name, figure and number in one line. Nothing where there is no letter.
void write_worst(Writer& writer, const Drafting& drafting, Fit fit);

}  // namespace tinworm::scene
