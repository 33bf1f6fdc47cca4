// How a camera was held, and the turn that sets its picture upright.
#pragma once

#include <string_view>

#include "photos/pixels.hpp"

namespace tinworm::photos {

// Exif 2.32 (CIPA DC-008-2019), 4.6.4 A, tag 0x0112: which sides of the scene row 0 and column 0 of
// the stored picture are. From memory.
enum class Orientation {
  top_left = 1,
  top_right,     // mirrored across
  bottom_right,  // upside down
  bottom_left,   // mirrored down
  left_top,      // mirrored about the diagonal from top left
  right_top,     // to be turned a quarter clockwise
  right_bottom,  // mirrored about the other diagonal
  left_bottom    // to be turned a quarter anticlockwise
};

// Of an APP1 segment, from "Exif" on. Where it is not told or makes no sense, top_left.
Orientation orientation_of(std::string_view exif);

Pixels upright(Pixels stored, Orientation orientation);

}  // namespace tinworm::photos
