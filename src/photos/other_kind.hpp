// What a file is that isn't a JPEG.
#pragma once

#include <string>
#include <string_view>

namespace tinworm::photos {

// From its first bytes: "a PNG file, whatever its name says"; where they tell nothing, "no JPEG".
std::string other_kind(std::string_view bytes);

}  // namespace tinworm::photos
