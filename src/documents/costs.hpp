// What the work may take, in a few words for the first page; money in the currency of the rates.
#pragma once

#include <string>
#include <vector>

#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

inline constexpr const char* nothing_to_do = "Nothing was found that asks for work where looked.";
std::string counted_parts(std::size_t how_many);  // "a part", "3 parts"

// Hours and money, what isn't in them, what could come on top though nothing was found.
std::vector<std::string> cost_lines(const weighing::Result& result, const work::Plan& plan);
// What the work leaves between the price asked and the worth when sound. Empty without both prices.
std::string good_buy(const weighing::Result& result, const work::Plan& plan);

}  // namespace tinworm::documents
