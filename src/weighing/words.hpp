// The sentences of the method: what a place is, in words and figures.
#pragma once

#include <string>
#include <string_view>

#include "rules/rules.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// "80 % of the sheet left (72 to 88 %), measured"; "about 70 % left (50 to 90 %), judged by eye".
std::string metal_text(const Spot& spot);

// "3 holes, the largest 20 x 15 mm"; empty of one hole or none.
std::string holes_text(const Spot& spot);

// What was found there that no step tells: "3 holes, the largest 20 x 15 mm, stuffed with foam"; of
// one hole nothing. Empty where there is none of it.
std::string signs_text(const Spot& spot);

// "over 2000 um" where the gauge went no further, else "1600 um".
std::string greatest_text(const Film& film);

// What a place is, in one form of words on every paper: "thin", "pinhole", "cracked 35 mm",
// "weak, stuffed".
std::string place_text(const Spot& spot);

// "where the front spring eye stands", "120 mm from the front spring eye", "".
std::string near_text(const Spot& spot);

// One place, by the rule that names it: zone, place, step, figure, nearness.
std::string describe(const Spot& spot, const Zone& zone, std::string_view rule,
                     const rules::Rules& rules);

// The hand, a tool or a pit says less than the readings: no figure below them is called measured.
bool judged_below_readings(const MetalLeft& metal);

// "Rules changed (strict.yaml, Stricter for salted roads): near-radius 250 mm (default 300 mm); …":
// every one of them, with what it stands at otherwise. Empty where none was.
std::string rules_text(const Result& result);
std::string rules_from(const Result& result);  // its beginning: "Rules changed (strict.yaml)"

extern const char* const standing_caution;

}  // namespace tinworm::weighing
