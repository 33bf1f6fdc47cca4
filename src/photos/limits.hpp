// What a photo may ask for, told from its header before memory is taken. Common practice: far above
// any camera a survey is made with, low enough that a malicious file can't fill the machine.
#pragma once

#include <cstddef>
#include <cstdint>

namespace tinworm::photos {

constexpr std::int64_t most_pixels = 200'000'000;
// Of coefficients, which a JPEG in several scans has to hold whole, for all that are read at once:
// 2 bytes a sample, so about 180 million pixels of a camera's usual half-size colour.
constexpr std::int64_t most_held_bytes = 512 << 20;
// A camera's progressive JPEG has about ten; each may cost a pass over the whole picture.
constexpr int most_scans = 100;
constexpr std::size_t most_file_bytes = 128 << 20;

}  // namespace tinworm::photos
