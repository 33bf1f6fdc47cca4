// How values are written into a survey, so that its reader reads the same again.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "survey/survey.hpp"

namespace tinworm::survey {

// Free words as a scalar: plain where every YAML reader takes them for text, else in double quotes.
std::string written(std::string_view text);

// What was found in a place, as the parts of a line: "pitting, firm, 180x60, metal 0.88 0.86". In
// mm. Photos and notes are left out: they belong to the visit.
std::string findings_line(const Spot& spot);

// "let-in, seam-weld, 300x120, 2021-05, cut-out": without how it is now and what it
// reads, which each visit finds out.
std::string repair_line(const Repair& repair);

// `140 over 2000 um`: the greatest is the one that may be off the gauge's scale.
std::string films_text(const Zone& zone);

std::string size_text(const Size& size);  // "180x60"

// "0.88 0.86", thousandths of a millimetre at most
std::string readings(const std::vector<double>& lengths_mm);

}  // namespace tinworm::survey
