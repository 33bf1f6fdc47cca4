// The ground of a zone: how it was seen, never what was found there.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

enum class SeenAs { bare, under_coating, in_part, not_seen, not_fitted };

// `in_part` also where the inside of a box or of layers wasn't seen: white would say that it was.
// Readings on a coated zone count as bare: the metal itself was reached.
SeenAs seen_as(const weighing::Zone& zone);

// White, level pale lines, wide diagonals with white or grey between them, crossed out.
Item ground_fill(SeenAs seen, const std::vector<Polyline>& shape);

void draw_ground(Drafting& drafting, const DrawnZone& drawn);

}  // namespace tinworm::scene
