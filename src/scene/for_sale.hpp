// What a buyer may read of a result. Everything that people typed freely stays behind: the owner's
// name and all that tells where the car is, money, notes, reasons, photos, the names of places that
// aren't the body plan's, file names. What is kept is named one by one, so that a key added to
// surveys later stays behind too.
#pragma once

#include "weighing/result.hpp"

namespace tinworm::scene {

inline constexpr const char* another_place = "another place";
inline constexpr const char* own_part = "a part that the body plan lacks";

// Of free words only the car's name is left and, where `signed_name`, the surveyor's; any interest
// in the sale is then "none" or "declared", empty where nothing was said. Zones not seen are told
// by how: covered, tapped or felt only, not recorded; own zones among them by their step alone.
weighing::Result for_sale(const weighing::Result& result, bool signed_name);

}  // namespace tinworm::scene
