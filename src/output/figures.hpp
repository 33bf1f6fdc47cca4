// How figures are written for people, and rounded for machines.
#pragma once

#include <optional>
#include <string>

#include "quantity/length.hpp"
#include "weighing/result.hpp"

namespace tinworm::output {

// To 1e-6, so that the last bits of a sum never show in a file; no negative zero.
double rounded(double value);

// "0.81 mm" or "32 thou" for sheet metal; "180 mm" or "7.1 in" for distances.
std::string sheet_text(double mm, quantity::Units units);
std::string distance_text(double mm, quantity::Units units);

std::string percent_text(double share);                 // "84 %"
std::string percent_span(const weighing::Span& share);  // "72–80–88 %": low, likely, high

// A burden in words, for people who would misread an index number. The limits are ours:
// next to none to 0.05, light to 0.20, considerable to 0.45, heavy to 0.75, very heavy above.
std::string burden_word(double burden);

}  // namespace tinworm::output
