// The sentences of a comparison.
#pragma once

#include <string>

#include "history/comparison.hpp"
#include "quantity/length.hpp"

namespace tinworm::history {

// "0.12 mm lost since 2017-04 (0.05 to 0.19), 11 % of the sheet", "holed since, between 2017-04 and
// 2025-04", "repaired since 2017-04 (let-in of 2021-05)".
std::string change_text(const Place& place, const Comparison& comparison, quantity::Units units);

// "0.015 mm a year (0.006 to 0.024), by a line through 3 readings"; empty where there is none.
std::string rate_text(const Place& place, quantity::Units units);

// "to the limit of 0.94 mm: 2 to 9 years; to a hole: 40 years or more"; empty where there is none.
std::string outlook_text(const Place& place, quantity::Units units);

// Whole years, the lower end rounded down and the upper one up: "2 to 9 years", "under a year to 9
// years", "40 years or more".
std::string life_text(const metal::LifeRange& life);

// The smallest losses that would have shown where it is the same: "0.02 to 0.03 mm"; empty where no
// such place was measured.
std::string least_shown_text(const Comparison& comparison, quantity::Units units);

// "worse", "no longer visible".
std::string change_words(Change change);

std::string place_title(const Place& place);  // its name, or "mean of the zone"

// No rate of the past tells how much longer than this a place has.
constexpr double farthest_years = 50;

extern const char* const planning_caution;  // ranges for planning, no date of failure

}  // namespace tinworm::history
