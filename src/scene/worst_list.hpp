// The worst places in words, in the order of their letters.
#pragma once

#include "scene/column.hpp"

namespace tinworm::scene {

// One entry for each letter on the drawing, none besides: name, station, step, figure, how it is
// known, the zone's number. `close`: without what it is near; `brief`: name, figure and number in
// one line. The first `most` of them, and on which page the others stand. Nothing where there is no
// letter.
void write_worst(Writer& writer, const Drafting& drafting, Fit fit, std::size_t most = 9,
                 const std::string& overflow_page = "");

// "C  outer sill, left: rear end: thin, 79 %, measured · 51", for a list.
std::string worst_line(const weighing::Result& result, const weighing::Spot& spot);

}  // namespace tinworm::scene
