// The numbered key of a body: its sheets with every zone's number, the names beside them, the
// places where one measures and the mounts that decide. No survey is in it.
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "scene/page.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

// Structure first, then skin, then frame, each only if the body draws zones there and it is in
// `kinds`. `points_by_name`: then a list of all mounts and stations.
std::vector<Page> body_key(const body::PlanPtr& plan, Paper size,
                           const std::vector<SheetKind>& kinds, const Measure& measure,
                           bool points_by_name = false);

}  // namespace tinworm::scene
