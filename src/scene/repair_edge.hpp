// Repairs: an edge inside the zone's own, since a survey doesn't say where in the zone a repair
// lies. Stitches for one that can be relied on, a wave for one that can't, dash and dot where it
// isn't known. Blue-black ink, never a fill.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

enum class RepairEdge { none, stitches, dash_and_dot, wave };
RepairEdge repair_edge_of(const weighing::Zone& zone);  // of several repairs the least reliable

// The edge along the closed lines of `shape`, inside it.
Item repair_edge(RepairEdge edge, const std::vector<Polyline>& shape);

void draw_repair_edge(Drafting& drafting, const DrawnZone& drawn);

}  // namespace tinworm::scene
