// What the drawing of a body plan must keep to: areas, nearness and the diagram all rest on it. The
// shape of the file is the reader's business (body/reader.hpp).
#pragma once

#include <vector>

#include "body/plan.hpp"
#include "yaml/problem.hpp"

namespace tinworm::body {

// Every fault of the plan at once, in order of the file:
// - an outline that is open, crosses itself, or lies outside the body
// - two zones of one layer and view that overlap by over 2 % of the smaller
// - a zone drawn nowhere; without its pair; with an area over 1 % from its pair's
// - a zone that hides itself or one the body lacks
// - a station more than 60 mm from its zone's extent, or outside the body
// - a mount outside the body; on a zone the body lacks, or more than 60 mm from its extent
// - a wall of a zone the body lacks, without two points, of a point the box lacks, or past a point
//   of the box that lies on it (within 0.5 mm) without being named: no cell could be found there
// The body is the box of `size` and `x`, with 30 mm to spare. All these limits: common practice.
yaml::Problems check_plan(const Plan& plan);

// How much of the silhouette the zones of one layer cover in one view, 0 to 1. The silhouette is
// the union of all closed strong lines of that layer and view and of the zones themselves, each
// ring filled. Without such lines nothing tells the body's shape from that of its zones, and the
// share only says how much they leave open within themselves: `has_silhouette` is false there.
struct Coverage {
  Layer layer = Layer::skin;
  View view = View::left;
  double drawn_share = 0;
  bool has_silhouette = false;
};

// One for each layer and view that any zone is drawn in, skin before structure, in order of View.
std::vector<Coverage> coverage(const Plan& plan);

}  // namespace tinworm::body
