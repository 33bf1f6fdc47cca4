#include "body/view.hpp"

namespace tinworm::body {
namespace {

void mirror(std::vector<geometry::Point>& points, bool first) {
  for (geometry::Point& point : points) {
    double& across = first ? point.u : point.v;
    across = 0.0 - across;  // never -0
  }
}

}  // namespace

Axis first_axis(View view) {
  return view == View::front || view == View::rear ? Axis::across : Axis::along;
}

Axis second_axis(View view) {
  return view == View::top || view == View::underneath || view == View::frame ? Axis::across
                                                                              : Axis::up;
}

geometry::Outline mirrored(const geometry::Outline& outline, View view) {
  geometry::Outline twin = outline;
  const bool first = first_axis(view) == Axis::across;
  if (!first && second_axis(view) != Axis::across) return twin;
  for (geometry::Ring& ring : twin.rings) mirror(ring, first);
  for (auto& line : twin.open) mirror(line, first);
  return twin;
}

View mirrored(View view) {
  if (view == View::left) return View::right;
  if (view == View::right) return View::left;
  return view;
}

}  // namespace tinworm::body
