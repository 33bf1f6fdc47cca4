// From body coordinates to paper: how each view is turned and at what scale.
#pragma once

#include <string_view>
#include <vector>

#include "body/view.hpp"
#include "scene/page.hpp"

namespace tinworm::scene {

// Nose to the left, except in the right view. Seen from above the car's left lies at the bottom,
// seen from below (underneath, frame) at the top. The front view is seen from ahead, so the car's
// left is at the right hand; the rear view from behind.
struct Projection {
  body::View view = body::View::left;
  double scale = 1.0 / 20;  // mm on paper for a mm of the body
  At origin;                // where u = 0, v = 0 lies on paper

  At paper(geometry::Point body) const;
  At project(const geometry::Point3& point) const;  // a point in space
  geometry::Point body(At paper) const;
};

// +1 where u (or v) grows with x (or y) on paper, else -1.
double sign_of_u(body::View view);
double sign_of_v(body::View view);

// Rings closed, open lines open.
std::vector<Polyline> on_paper(const geometry::Outline& outline, const Projection& projection);

std::string_view view_name(body::View view);  // "left side", "underneath", "front"
std::string_view view_note(body::View view);  // "seen from below, the car's left at the top"

}  // namespace tinworm::scene
