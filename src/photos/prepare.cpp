#include "photos/prepare.hpp"

#include <stdexcept>
#include <utility>

#include "photos/jpeg_reader.hpp"
#include "photos/jpeg_writer.hpp"

namespace tinworm::photos {

tl::expected<Prepared, Refusal> prepare(std::string_view jpeg, const Wanted& wanted) {
  if (wanted.greatest_side_px < 1 || wanted.quality < 1 || wanted.quality > 100) {
    throw std::invalid_argument("a photo has at least one pixel a side and a quality of 1 to 100");
  }
  const auto pixels = read_jpeg(jpeg, wanted.greatest_side_px);
  if (!pixels) return tl::unexpected(pixels.error());
  return Prepared{write_jpeg(*pixels, wanted.quality), pixels->width_px, pixels->height_px};
}

std::int64_t held_bytes(std::string_view jpeg) {
  return coefficient_bytes(jpeg);
}

}  // namespace tinworm::photos
