// How a change is shown on a comparison map: the classes of its colours and textures.
#pragma once

#include <string_view>

#include "history/comparison.hpp"

namespace tinworm::scene {

// A diverging ramp, from what reads thicker over what shows nothing to what lost much; then what no
// ramp can tell. Of several worse places in a zone the later of these counts.
enum class Showing {
  thicker,
  nothing,
  lost_little,  // up to 5 % of the sheet
  by_sign,      // worse by hand or eye: no figure
  lost_some,    // 5 to 15 %
  lost_much,    // 15 to 30 %
  gone,         // more, or gone through since
  repaired,
  newly_seen,
  no_longer_visible,
  not_comparable,
  not_seen,   // in no survey
  not_fitted  // on the car as it is now
};

Showing showing_of(const history::Place& place);
Showing showing_of(const history::Zone& zone, const weighing::Result& latest);

std::string_view name_of(Showing showing);     // "lost 5 to 15 %"
std::string_view meaning_of(Showing showing);  // "of the sheet, at the worst place"

}  // namespace tinworm::scene
