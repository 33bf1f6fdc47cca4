// Photos side by side, each with its caption under it; where one is missing, a marked gap says why.
#pragma once

#include <vector>

#include "documents/flow.hpp"
#include "photos/photo.hpp"
#include "scene/page.hpp"
#include "survey/survey.hpp"

namespace tinworm::documents {

using Photos = std::vector<survey::Photo>;

// In groups of so many: a strip is kept on one page.
std::vector<Photos> grouped(const Photos& photos, std::size_t most);

// Rows of photos no wider than `width_mm`; the height they take, 0 without photos.
double strip_height_mm(const Photos& photos, const photos::Album& album, double width_mm);

// Draws them from the top left of `area`, each with the name of its file: which of them was taken
// from afar nobody said.
void draw_strip(scene::Page& page, const scene::Area& area, const Photos& photos,
                const photos::Album& album, const scene::Measure& measure);

// Strips of three down the page, none torn.
void write_photos(Flow& flow, const Photos& photos, const photos::Album& album);

}  // namespace tinworm::documents
