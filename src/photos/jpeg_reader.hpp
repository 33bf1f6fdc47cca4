// Pixels of a JPEG.
#pragma once

#include <cstdint>
#include <limits>
#include <string_view>

#include <tl/expected.hpp>

#include "photos/pixels.hpp"
#include "photos/refusal.hpp"

namespace tinworm::photos {

// The whole picture, upright, its greatest side at most `greatest_side_px`; prepare.hpp has what is
// refused.
tl::expected<Pixels, Refusal> read_jpeg(std::string_view jpeg,
                                        int greatest_side_px = std::numeric_limits<int>::max());

// Of the coefficients that reading holds whole, by the header: nought but for a JPEG in several
// scans, and for what can't be read.
std::int64_t coefficient_bytes(std::string_view jpeg);

}  // namespace tinworm::photos
