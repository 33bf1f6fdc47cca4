// Any bytes as path data.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "geometry/path.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const auto path = tinworm::geometry::parse_path({reinterpret_cast<const char*>(bytes), size});
  if (path)
    tinworm::geometry::flatten(*path);
  else if (path.error().offset < 0 || path.error().offset > static_cast<int>(size))
    std::abort();  // a mistake outside the text
  return 0;
}
