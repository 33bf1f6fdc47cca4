// Where a place lies in the section of a box: on which straight face of which wall.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "body/plan.hpp"
#include "boxes/section.hpp"
#include "geometry/point.hpp"
#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// Between two points of its path a wall is one straight face.
struct Face {
  std::size_t wall = 0;  // in box.walls
  int zone = 0;
  geometry::Point from, to;
  double start_mm = 0, length_mm = 0;  // along the developed wall
};

// Every face of the box, wall by wall.
std::vector<Face> faces(const body::Box& box);

// The same box with each face a wall of its own, in the order of faces().
body::Box by_faces(const body::Box& box);

// What is known of a place in the section's plane.
struct InPlane {
  std::optional<double> u, v;
};
InPlane in_plane(const survey::Position& at, body::Axis axis);

// By the coordinates known: both, one, or none, when every face is as near.
double distance_mm(const InPlane& at, const Face& face);

// The nearest faces of a zone: all that tie. None where the box has no such wall.
std::vector<const Face*> nearest_faces(const std::vector<Face>& faces, int zone, const InPlane& at);

const Face* widest(const std::vector<const Face*>& faces);

// Along the box's axis and across it, as sizes lie on the zone.
struct Extents {
  double along_mm = 0;
  std::optional<double> across_mm;  // none: no size
};
Extents extents(const std::optional<survey::Size>& size, const body::Zone& zone,
                const body::Box& box, const rules::Rules& rules);

// Where a place of such a length lies along the box: at mid-length where that isn't known.
geometry::Interval along(const survey::Position& at, double length_mm, const body::Box& box);

// Whether a place of the zone lies in the box: in a part that is a wall only for a stretch, only
// what comes near that wall; without a place, only where the box takes half of the part.
bool lies_in(const Spot& spot, const body::Zone& zone, const body::Box& box,
             const std::vector<Face>& faces, const rules::Rules& rules);

}  // namespace tinworm::weighing
