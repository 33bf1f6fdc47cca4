// The words on papers for what a result holds.
#pragma once

#include <string>
#include <string_view>

#include "weighing/result.hpp"

namespace tinworm::scene {

std::string_view step_name(weighing::Step step);     // "thin"
std::string_view step_meaning(weighing::Step step);  // "past the limit for metal that carries"
std::string_view side_name(body::Side side);         // "left", "right"; empty for the centre line
// "outer sill, left"
std::string zone_name(const weighing::Zone& zone);
// "thin"; "bloom to thin", mildest first, where it was only looked at
std::string step_words(const weighing::Spot& spot);
// "80 % of the metal left (72 to 88), measured"; of a hole only how it is known
std::string metal_words(const weighing::Spot& spot);
// "near the front spring hanger", "may be near the …", "carries the …"; empty where it is near none
std::string near_words(const weighing::Spot& spot);
// "measured", "judged by hand", "judged by eye"
std::string_view evidence_words(weighing::Evidence evidence);
// "51–54, 61": in order, each once, runs of three or more as ranges
std::string number_list(std::vector<int> numbers);
// "could be worse; open up first": what a verdict leaves open. Empty where it leaves nothing.
std::string left_open(const weighing::Result& result);
// First letter large: "Outer sill".
std::string capitalised(std::string_view text);

}  // namespace tinworm::scene
