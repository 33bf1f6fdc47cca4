// What was found, by urgency: places that ask for repair, or may once they are opened, each with
// all that is known of it and its photos beside it; places to treat in a table, unless they have
// photos.
#pragma once

#include "documents/flow.hpp"
#include "photos/photo.hpp"
#include "quantity/length.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

void write_findings(Flow& flow, const weighing::Result& result, const photos::Album& album,
                    quantity::Units units);

// Photos of whole parts, and of places where nothing was found, by part.
void write_other_photos(Flow& flow, const weighing::Result& result, const photos::Album& album);

}  // namespace tinworm::documents
