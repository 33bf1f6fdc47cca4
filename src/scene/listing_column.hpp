// The column beside a listing's drawing: verdict, how it was looked at, what was not seen, repairs,
// key, the caution.
#pragma once

#include <vector>

#include "scene/drafting.hpp"

namespace tinworm::scene {

// All of it on every sheet, since each may be shown alone; where it is too much, the list of
// repairs ends with how many more there are. `drafting.result` went through `for_sale`.
void draw_listing_column(Drafting& drafting);

}  // namespace tinworm::scene
