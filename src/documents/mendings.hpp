// What was mended before and how well; which metal is renewed and which is as it was found.
#pragma once

#include "documents/flow.hpp"
#include "photos/photo.hpp"
#include "quantity/length.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

// With the photos of repairs that don't stand among the findings.
void write_mendings(Flow& flow, const weighing::Result& result, const photos::Album& album,
                    quantity::Units units);

}  // namespace tinworm::documents
