// A page before anything is drawn on it.
#pragma once

#include "scene/page.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

// With the sheet's frame and title and the layers of a drawing, from below to above, all empty.
Page blank_page(const Sheet& sheet, const PaperSize& size);

}  // namespace tinworm::scene
