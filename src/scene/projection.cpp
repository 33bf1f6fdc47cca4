#include "scene/projection.hpp"

namespace tinworm::scene {

using body::View;

double sign_of_u(View view) {
  return view == View::right || view == View::front ? -1 : 1;
}

double sign_of_v(View view) {
  return view == View::underneath || view == View::frame ? 1 : -1;
}

At Projection::paper(geometry::Point body) const {
  return {origin.x_mm + sign_of_u(view) * scale * body.u,
          origin.y_mm + sign_of_v(view) * scale * body.v};
}

At Projection::project(const geometry::Point3& point) const {
  const auto coordinate = [&](body::Axis axis) {
    return axis == body::Axis::along    ? point.x_mm
           : axis == body::Axis::across ? point.y_mm
                                        : point.z_mm;
  };
  return paper(
      geometry::Point{coordinate(body::first_axis(view)), coordinate(body::second_axis(view))});
}

geometry::Point Projection::body(At paper) const {
  return {(paper.x_mm - origin.x_mm) / (sign_of_u(view) * scale),
          (paper.y_mm - origin.y_mm) / (sign_of_v(view) * scale)};
}

std::vector<Polyline> on_paper(const geometry::Outline& outline, const Projection& projection) {
  std::vector<Polyline> lines;
  const auto add = [&](const std::vector<geometry::Point>& points, bool closed) {
    Polyline line{{}, closed};
    line.points.reserve(points.size());
    for (const geometry::Point point : points) line.points.push_back(projection.paper(point));
    lines.push_back(std::move(line));
  };
  for (const auto& ring : outline.rings) add(ring, true);
  for (const auto& open : outline.open) add(open, false);
  return lines;
}

std::string_view view_name(View view) {
  switch (view) {
    case View::left:
      return "Left side";
    case View::right:
      return "Right side";
    case View::top:
      return "Top";
    case View::underneath:
      return "Underneath";
    case View::front:
      return "Front";
    case View::rear:
      return "Rear";
    case View::frame:
      return "Frame";
  }
  return "";
}

std::string_view view_note(View view) {
  switch (view) {
    case View::left:
    case View::right:
      return "";
    case View::top:
      return "from above, the car\u2019s left at the bottom";
    case View::underneath:
    case View::frame:
      return "from below, the car\u2019s left at the top";
    case View::front:
      return "from ahead";
    case View::rear:
      return "from behind";
  }
  return "";
}

}  // namespace tinworm::scene
