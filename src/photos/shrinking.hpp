// Makes a picture smaller, row by row.
#pragma once

#include <cstdint>
#include <vector>

#include "photos/pixels.hpp"

namespace tinworm::photos {

// Each pixel is the mean of what it covers, edges counted by their share, in whole numbers: the
// same on every machine. Only rows of the size it shall have are held.
class Shrinking {
 public:
  // Not to more than it has: 1 <= width_px <= from_width_px, and so for the height.
  Shrinking(int from_width_px, int from_height_px, int width_px, int height_px, int channels);

  void add(const unsigned char* row);  // the next from the top
  Pixels done() &&;                    // once every row has come

 private:
  void sum_across(const unsigned char* row);
  void finish_row();

  std::int64_t from_width_, from_height_;
  Pixels to_;
  std::vector<std::uint64_t> across_;  // sums over a row's covered widths
  std::vector<std::uint64_t> down_;    // and over the rows so far
  std::int64_t y_ = 0;                 // rows that came
  int row_ = 0;                        // of `to_`, being summed
};

}  // namespace tinworm::photos
