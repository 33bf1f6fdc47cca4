// Measures text with the fonts the painter sets it in. The extents of what was measured once are
// kept, since a scene asks for the same words again and again.
#pragma once

#include "scene/page.hpp"

namespace tinworm::painting {

// Not to be shared between threads; each thread makes its own.
scene::Measure measure();

}  // namespace tinworm::painting
