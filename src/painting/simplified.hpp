// Fewer points for the same line: what no eye tells apart makes files large.
#pragma once

#include "scene/page.hpp"

namespace tinworm::painting {

constexpr double simplified_to_mm = 0.025;  // on paper

// No point of the old line lies further than `within_mm` from the new one (Ramer 1972; Douglas and
// Peucker 1973). Its points are points of the old.
scene::Polyline simplified(const scene::Polyline& line, double within_mm = simplified_to_mm);

}  // namespace tinworm::painting
