// A thin-walled section in its plane: named points joined by walls, and the cells the walls
// enclose. All lengths are along the middle of the sheet, in mm.
#pragma once

#include <array>
#include <vector>

#include "body/plan.hpp"
#include "geometry/point.hpp"

namespace tinworm::boxes {

// Walls meet in points only, and no wall passes a point without naming it: body/checker.hpp sees to
// that.
struct Section {
  std::vector<geometry::Point> points;
  std::vector<std::vector<int>> walls;  // each a way from point to point, at least two
};

// In the order of the box's own walls. Throws std::out_of_range for a point the box lacks.
Section section(const body::Box& box);

double width_mm(const Section& section, std::size_t wall);  // developed

// One straight piece between two points. Walls that lie on one another are one piece.
struct Piece {
  int from = 0, to = 0;
  double length_mm = 0;
  double sheet_mm = 0;  // the sum of the sheets that lie there
};

// The pieces of all walls with the sheet given for each wall; walls of no sheet are left out.
std::vector<Piece> pieces(const Section& section, const std::vector<double>& sheet_mm);

// The cells: the inner faces of the plane graph that the pieces draw. `beside` has for each piece
// the cell on its left and on its right going from `from` to `to`; -1 is outside. A flange has the
// same on both sides. Parts that hang together nowhere have cells of their own, one inside another
// too: such tubes twist together, each by itself.
struct Cells {
  std::vector<double> area_mm2;
  std::vector<std::array<int, 2>> beside;
};
Cells cells(const Section& section, const std::vector<Piece>& pieces);

}  // namespace tinworm::boxes
