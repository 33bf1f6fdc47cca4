// Letters: one line of text laid out the same way for measuring and for every surface. Resolution
// 72, no hinting, no rounding, from the packaged DejaVu files alone, so that the same text gives
// the same bytes on every machine. A letter these lack comes from whatever fonts are installed, and
// is reported.
#pragma once

#include <string>
#include <string_view>

#include "painting/held.hpp"
#include "scene/page.hpp"

namespace tinworm::painting {

struct Line {
  Held<PangoLayout> layout;
  PangoLayoutLine* first = nullptr;  // owned by the layout
  scene::Extent extent;              // ascent and descent are the font's, not the letters'
  bool fallen_back = false;          // some letters came from installed fonts
  int unknown_letters = 0;           // no font has them: boxes are drawn
};

// Throws std::invalid_argument for text that is not UTF-8 or has more than one line, and
// std::runtime_error, with the package to install, where the fonts can't be read. One font map a
// thread, never shared: safe to call from any thread.
Line lay_out(std::string_view text, scene::Font font, double size_pt);

const char* font_file(scene::Font font);  // where the packaged font lies

}  // namespace tinworm::painting
