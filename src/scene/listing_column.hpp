// The column beside a listing's drawing: verdict, how it was looked at, what was not seen, repairs,
// key, the caution.
#pragma once

#include <vector>

#include "scene/drafting.hpp"
#include "scene/further_pages.hpp"

namespace tinworm::scene {

// All of it on every sheet, since each may be shown alone; where it is too much, the lists end with
// how many more there are, and the page `overflow_page` has all. `drafting.result` went through
// `for_sale`.
Further draw_listing_column(Drafting& drafting, const std::string& overflow_page);

}  // namespace tinworm::scene
