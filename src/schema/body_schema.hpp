// The JSON Schema of a body plan: panels/README.md tells how to draw one.
#pragma once

#include "schema/part.hpp"

namespace tinworm::schema {

// What body/reader.hpp reads, as far as shape goes. Names that must be found elsewhere in the plan,
// numbers that are compared, and the drawing itself (body/checker.hpp) are the reader's to check.
Json body_schema();

}  // namespace tinworm::schema
