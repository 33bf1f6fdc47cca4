// From a camera's file to the picture that goes into a paper.
#pragma once

#include <cstdint>
#include <string_view>

#include <tl/expected.hpp>

#include "photos/photo.hpp"
#include "photos/refusal.hpp"

namespace tinworm::photos {

struct Wanted {
  int greatest_side_px = 1600;  // a smaller photo stays as it is; 135 mm at 300 a 25.4 mm
  int quality = 85;             // of JPEG, 1 to 100
};

// The picture in `jpeg`, turned upright by its EXIF orientation, made smaller where it is larger
// than wanted, and written anew in grey or colour: what else the file held (where and when it was
// taken, by which camera, a thumbnail, comments) is gone. Colours are taken as sRGB: the profile of
// a camera that sees wider goes with the rest, and its colours come out a little duller.
//
// The file is read to its end: one that is cut short or damaged is refused, and so is what isn't a
// JPEG, is for a printing press (CMYK), or is larger than limits.hpp allows. The same bytes give
// the same bytes. Memory is that of the picture as wanted and some rows, but a JPEG in several
// scans is held whole. Safe on any thread. Throws std::invalid_argument for a wish out of range.
tl::expected<Prepared, Refusal> prepare(std::string_view jpeg, const Wanted& wanted);

// About how many bytes `prepare` will hold for this file beside it, by its header: much only for a
// JPEG in several scans. 0 for what can't be read.
std::int64_t held_bytes(std::string_view jpeg);

}  // namespace tinworm::photos
