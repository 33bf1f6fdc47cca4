// The order in which one goes over a car: round the outside, then inside and under the lids, then
// underneath on the lift. Paper and survey files follow it, so that nobody turns pages.
#pragma once

#include <string>
#include <vector>

#include "body/plan.hpp"

namespace tinworm::body {

struct Leg {
  std::string title;       // "Outside, left side: front to rear"
  std::vector<int> zones;  // in the order one comes to them
};

// Every zone of the plan in exactly one leg. Outside are zones drawn with the skin on; of the
// others those that lie wholly above the sills' tops (0.3 of the car's height) are reached from
// inside or from under the lids, the rest from below. Legs without zones are left out.
std::vector<Leg> walk_round(const Plan& plan);

}  // namespace tinworm::body
