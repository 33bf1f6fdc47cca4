// The words of an SVG as words: found by search, read aloud, drawn alike wherever the file goes.
#pragma once

#include <string>

#include "scene/page.hpp"

namespace tinworm::painting {

// Elements to stand before the end of the root: the letters that the page uses as embedded fonts,
// cut down to them, and a <text> for each run. Viewers that take no embedded font fall back on an
// installed DejaVu Sans. Throws std::runtime_error where a font can't be cut down.
std::string svg_text(const scene::Page& page);

std::string escaped(std::string_view text);  // for XML

}  // namespace tinworm::painting
