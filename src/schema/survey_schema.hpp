// The JSON Schema of a survey.
#pragma once

#include "schema/part.hpp"

namespace tinworm::schema {

// What survey/reader.hpp reads, as far as shape goes. Whether the body has a zone, whether a zone
// was seen and whether dates fit one another is the reader's to find.
Json survey_schema();

}  // namespace tinworm::schema
