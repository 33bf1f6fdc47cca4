// What stands beside a place on the drawing, and the letter that the margin knows it by.
#pragma once

#include <string>
#include <vector>

#include "scene/drafting.hpp"

namespace tinworm::scene {

// "79 %" of the metal left, measured; "≈70 %" judged; "hole 40×25", "crack 35", "repair".
std::string figure_words(const weighing::Result& result, const weighing::Spot& spot);

// On the skin, whose metal carries nothing: "hole 40×25", "blister", "79 %" where it was measured.
std::string skin_words(const weighing::Result& result, const weighing::Spot& spot);

// The worst nine of the places that a structure or frame sheet shows, worst first: A to I.
std::vector<const weighing::Spot*> lettered(const weighing::Result& result);

// "A"; empty where it is none of the nine.
std::string letter_of(const weighing::Result& result, const weighing::Spot& spot);

// Writes letter and figure beside each place, in the view that shows it best: the letters first, as
// white on a small black flag, then figures as far as there is room. A leader only where there is
// no room at the mark, short and over no words.
void draw_letters(Drafting& drafting);
void draw_figures(Drafting& drafting);

}  // namespace tinworm::scene
