// The column beside a sheet's drawing: verdict, changed rules, key, what was not seen, the caution.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

// Fills the column; true if the limits or the changed rules found no room in full and need a page
// of their own, which will be called `overflow_page`. `called` are the spots that have callouts.
bool draw_column(Drafting& drafting, const std::vector<const weighing::Spot*>& called,
                 const std::string& overflow_page);

}  // namespace tinworm::scene
