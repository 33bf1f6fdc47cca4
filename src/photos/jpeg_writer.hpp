// A JPEG of pixels.
#pragma once

#include <string>

#include "photos/pixels.hpp"

namespace tinworm::photos {

// Baseline, with a JFIF header and no other word about the picture. Throws std::runtime_error with
// the library's words if it fails.
std::string write_jpeg(const Pixels& pixels, int quality);

}  // namespace tinworm::photos
