// What is known of one place, in words.
#pragma once

#include <string>

#include "quantity/length.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

// The survey's own words on a place; null for repairs.
const survey::Spot* noted(const weighing::Result& result, const weighing::Spot& spot);

// Photos of the place, or of the repair that it is.
const std::vector<survey::Photo>& photos_of(const weighing::Result& result,
                                            const weighing::Spot& spot);

// "Outer sill, left (51), rear end: thin"
std::string place_title(const weighing::Zone& zone, const weighing::Spot& spot);
// "; under the deepest pit 51 %": of the sheet; empty where no pit was read.
std::string under_the_pit(const weighing::Spot& spot);
// "79 % of the metal left (77 to 82), measured; 177 mm from the lower belt anchorage."
std::string place_judged(const weighing::Spot& spot, quantity::Units units);
// "Pitting, 180 mm x 60 mm; firm, dull. Read 0.88 0.86 0.91 0.87 mm of 1.11 mm (read on sound
// metal of the same sheet). Deepest pit 0.31 mm. Behind the splash plate."
std::string place_noted(const weighing::Result& result, const weighing::Spot& spot,
                        quantity::Units units);

}  // namespace tinworm::documents
