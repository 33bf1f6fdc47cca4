// The units that quantities are written in, as words: for those who tell what may be written. What
// each is worth is in unit.cpp.
#pragma once

#include <string_view>
#include <vector>

namespace tinworm::quantity {

std::vector<std::string_view> length_unit_words();  // coatings take the same
std::vector<std::string_view> area_unit_words();
std::vector<std::string_view> distance_unit_words();

}  // namespace tinworm::quantity
