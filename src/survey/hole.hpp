// Holes of one place: one, several with their sizes, or several of which the largest is known.
#pragma once

#include "survey/page.hpp"

namespace tinworm::survey {

struct Holes {
  std::optional<Size> largest;  // it governs
  std::vector<Size> others;     // largest first
};

// `14x9`; `20 15 8 mm`, largest wherever it stands; `5 holes to 30`, `5 to 30`: one of 30, four
// reckoned at half of it (common practice).
Holes read_holes(Page& page, const yaml::Node& node);

// `5 holes to 30`, `three holes, up to 30` is not: the number stands first, in figures.
bool is_count_of_holes(std::string_view part);

std::string holes_text(const Size& largest, const std::vector<Size>& others);  // "40x15 12x12"

}  // namespace tinworm::survey
