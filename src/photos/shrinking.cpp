#include "photos/shrinking.hpp"

#include <algorithm>
#include <utility>

namespace tinworm::photos {

// Lengths are counted in a unit that both sizes divide: a row is from_width * width units wide, a
// pixel of the source `width` units, one of the result `from_width`. So no pixel of the source lies
// in more than two of the result.

Shrinking::Shrinking(int from_width_px, int from_height_px, int width_px, int height_px,
                     int channels)
    : from_width_(from_width_px),
      from_height_(from_height_px),
      to_{width_px, height_px, channels, {}},
      across_(std::size_t{1} * width_px * channels),
      down_(across_.size()) {
  to_.rows.reserve(across_.size() * height_px);
}

void Shrinking::sum_across(const unsigned char* row) {
  std::fill(across_.begin(), across_.end(), 0);
  const std::int64_t width = to_.width_px;
  const int channels = to_.channels;
  std::uint64_t* pixel = across_.data();
  std::int64_t end = from_width_;  // of `pixel`
  for (std::int64_t x = 0; x < from_width_; ++x, row += channels) {
    const std::int64_t left = x * width, right = left + width;
    const std::int64_t here = std::min(right, end) - left;
    for (int c = 0; c < channels; ++c) pixel[c] += here * row[c];
    if (right < end) continue;
    pixel += channels;
    end += from_width_;
    if (here == width) continue;
    for (int c = 0; c < channels; ++c) pixel[c] += (width - here) * row[c];
  }
}

void Shrinking::finish_row() {
  const std::uint64_t all = from_width_ * from_height_;
  for (std::uint64_t& sum : down_) {
    to_.rows.push_back(static_cast<unsigned char>((sum + all / 2) / all));
    sum = 0;
  }
  ++row_;
}

void Shrinking::add(const unsigned char* row) {
  sum_across(row);
  const std::int64_t height = to_.height_px;
  const std::int64_t top = y_ * height, bottom = top + height;
  const std::int64_t end = (row_ + 1) * from_height_;
  const std::int64_t here = std::min(bottom, end) - top;
  for (std::size_t i = 0; i < down_.size(); ++i) down_[i] += here * across_[i];
  ++y_;
  if (bottom < end) return;
  finish_row();
  if (here == height) return;
  for (std::size_t i = 0; i < down_.size(); ++i) down_[i] += (height - here) * across_[i];
}

Pixels Shrinking::done() && {
  return std::move(to_);
}

}  // namespace tinworm::photos
