// The JSON Schema of a rules file: the constants of the method that a careful user sets otherwise.
#pragma once

#include "schema/part.hpp"

namespace tinworm::schema {

// One key for each row of rules/constants.cpp, with its bounds, default and source. Bounds hold for
// bare numbers; a number with a unit in a text, and an order of constants among themselves, are the
// reader's to check.
Json rules_schema();

}  // namespace tinworm::schema
