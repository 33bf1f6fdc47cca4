// A part of the car by its number or its own key: what was weighed, how it is called, where it is
// drawn.
#pragma once

#include <string>

#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

// `number` 0 with the key of an own part, else `own` empty.

// Null where the result has no such part.
const weighing::Zone* part(const weighing::Result& result, int number, const std::string& own);

// "outer sill, left (51)", "sunroof tray (own-a)"; the key alone where the result has no such part.
std::string title_of(const weighing::Result& result, int number, const std::string& own);

// The name of its place on the sheets, for links; empty for an own part, which is on none.
std::string on_sheet(int number);

}  // namespace tinworm::documents
