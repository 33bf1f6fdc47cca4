// The worst three places of a sheet in words, each with its rank in a ring and a leader to it.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

struct Callout {
  const SpotMark* mark = nullptr;
  std::string title;  // "outer sill, left: thin"
  std::string
      detail;  // "rear end; 80 % of the metal left (72 to 88), measured; at the spring hanger"
};

// Worst first, at most `most`, of the spots drawn on the sheet.
std::vector<Callout> callouts_of(const Drafting& drafting, int most);

// Draws the callouts of the worst three in free space and returns their spots.
std::vector<const weighing::Spot*> draw_callouts(Drafting& drafting);

}  // namespace tinworm::scene
