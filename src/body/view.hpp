// The views a body is drawn in and how each lies in body coordinates.
#pragma once

#include <optional>
#include <string_view>

#include "geometry/point.hpp"

namespace tinworm::body {

// Path data is written in body coordinates, mm, never flipped:
//   left, right          u = X, v = Z   (a right view has the same figures as its left twin)
//   top, underneath, frame  u = X, v = Y
//   front, rear          u = Y, v = Z
// Sheets turn them: nose to the left, except in the right view; underneath has the car's left at
// the top.
enum class View { left, right, top, underneath, front, rear, frame };
enum class Layer { skin, structure };   // drawn with the skin on, with the skin off
enum class Axis { along, across, up };  // X, Y, Z

std::string_view word(View view);
std::string_view word(Layer layer);
std::string_view word(Axis axis);
std::optional<View> view_of(std::string_view word);

Axis first_axis(View view);   // of u
Axis second_axis(View view);  // of v

// The outline as its twin on the other side of the car has it: Y changes sign; in left and right
// nothing moves.
geometry::Outline mirrored(const geometry::Outline& outline, View view);
View mirrored(View view);  // left <-> right, others stay

}  // namespace tinworm::body
