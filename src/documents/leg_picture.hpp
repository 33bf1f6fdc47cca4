// A small picture of where a leg of the walk round lies: the outlines of the body, the leg's zones
// shaded and numbered. Nothing is marked on it, and nothing is to be.
#pragma once

#include "body/walk_round.hpp"
#include "documents/flow.hpp"

namespace tinworm::documents {

// In the view that shows most of the leg's zones; nothing where none is drawn.
void write_leg_picture(Flow& flow, const body::Plan& plan, const body::Leg& leg);

}  // namespace tinworm::documents
