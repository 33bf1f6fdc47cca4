// A picture in memory.
#pragma once

#include <cstddef>
#include <vector>

namespace tinworm::photos {

struct Pixels {
  int width_px = 0, height_px = 0;
  int channels = 3;                 // 1: grey; 3: red, green, blue
  std::vector<unsigned char> rows;  // from the top-left, sRGB, no gap between rows

  const unsigned char* at(int x, int y) const { return &rows[offset(x, y)]; }
  unsigned char* at(int x, int y) { return &rows[offset(x, y)]; }
  std::size_t offset(int x, int y) const { return (std::size_t{1} * y * width_px + x) * channels; }
  bool operator==(const Pixels&) const = default;
};

}  // namespace tinworm::photos
