// A drawing as Cairo writes it, with what it says at length said briefly.
#pragma once

#include <string>
#include <string_view>

namespace tinworm::painting {

// Places to two decimals of a point (0.0035 mm), colours as #rrggbb, styles without what SVG takes
// for granted. Nothing else changes: not text, photos or names.
std::string brief_svg(std::string_view svg);

}  // namespace tinworm::painting
