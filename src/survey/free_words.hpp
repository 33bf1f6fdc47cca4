// The free words of a survey, names and notes, read as far as a question about them needs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "quantity/ascii.hpp"

namespace tinworm::survey {

using quantity::lower_case;

// Runs of letters and digits, capitals A to Z made small: "Rear end, 2nd" is rear, end, 2nd.
std::vector<std::string> words_in(std::string_view text);

// The name that `name` is a slip of the keyboard away from, or has the words of in another order;
// "" where `names` holds the name itself, where none is near enough, and where the nearest differs
// in a number or in a word that tells places apart ("upper end" and "lower end", "hole 1" and "hole
// 2").
std::string meant_name(const std::string& name, const std::vector<std::string>& names);

}  // namespace tinworm::survey
