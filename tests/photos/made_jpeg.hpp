// JPEGs to test with, made by libjpeg from patches of colour.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "photos/pixels.hpp"

namespace tinworm::photos::fixture {

using Colour = std::vector<unsigned char>;  // as many as channels
inline const Colour red{200, 40, 30}, green{40, 160, 60}, blue{30, 50, 180}, white{240, 240, 240};

// Quarters: top left, top right, bottom left, bottom right.
Pixels quarters(int width_px, int height_px,
                const std::vector<Colour>& colours = {red, green, blue, white});

enum class Scans { one, progressive, of_each_coefficient };  // the last: 127, grey alone

struct Recipe {
  int quality = 95;
  Scans scans = Scans::one;
  int restart_rows = 0;
  std::vector<std::pair<int, std::string>> segments;  // marker, data; written after JFIF's
};

// From 1, 3 or 4 channels (4: CMYK).
std::string made_jpeg(const Pixels& pixels, const Recipe& recipe = {});

// An APP1 segment with the orientation, a made-up camera, and a place on earth.
std::pair<int, std::string> exif(int orientation, bool big_endian = false);

// The same JPEG that says it has another size.
std::string with_size(std::string jpeg, int width_px, int height_px);

}  // namespace tinworm::photos::fixture
