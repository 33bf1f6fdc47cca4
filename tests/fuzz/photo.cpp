// Any bytes as a camera's photo: what is taken must read again as what it says it is.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "photos/jpeg_reader.hpp"
#include "photos/prepare.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace tinworm::photos;
  const auto photo = prepare({reinterpret_cast<const char*>(bytes), size}, {64, 85});
  if (!photo) {
    if (photo.error().what.empty()) std::abort();  // refused, and nothing said
    return 0;
  }
  const auto again = read_jpeg(photo->jpeg);
  if (!again || again->width_px != photo->width_px || again->height_px != photo->height_px) {
    std::abort();
  }
  return 0;
}
