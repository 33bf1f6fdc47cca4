// The stations and mounts of a body by name.
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "scene/drafting.hpp"
#include "scene/text_columns.hpp"

namespace tinworm::scene {

// "front strut, top: suspension, on 47 48", then "51 52 outer sill: front end, rear end".
std::vector<Paragraph> points_of(const body::Plan& plan);

// Names mounts on a key beside their marks, the left one of a pair, where there is room. After all
// numbers are seated.
void name_mounts(Drafting& drafting);

}  // namespace tinworm::scene
