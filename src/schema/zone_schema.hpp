// How zones were seen and what was found in each.
#pragma once

#include "schema/part.hpp"

namespace tinworm::schema {

Json seen();   // of the survey: words with the zones they are true of
Json zones();  // refers to #/$defs/finding and #/$defs/repair

}  // namespace tinworm::schema
