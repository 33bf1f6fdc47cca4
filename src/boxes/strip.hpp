// Strips of thinned metal in a wall, and what the wall still counts for where they lie.
#pragma once

#include <vector>

namespace tinworm::boxes {

struct Strip {
  double from_mm = 0, to_mm = 0;  // along the box's axis
  double width_mm = 0;            // across it, in the section; more than the wall's counts as all
  double lambda = 1;              // metal left in it, 0 to 1; 0 is a hole
};

// ∫ds/t of a wall of width w and sheet t with strips b wide and l long at λ beside one another:
//   [w + Σ min(b(1/λ - 1), w/4 · 10^(b/w) · (1 + l/w)²)] / t
// Exact for a long strip; a short one is bridged by shear round it. The second term was fitted to
// finite-element runs on square and 170 x 80 tubes; worked for this method, no published source.
// Runs of our own (tests/outside/hole_test.cpp) agree within 0.08 of the kept twist as long as the
// section keeps its shape, by bulkheads or joints near by; where it can lean over, a hole of over
// half the wall keeps far less than this says.
double shear_path(double width_mm, double sheet_mm, const std::vector<Strip>& strips);

// Σ s t³/3 of the wall, mm⁴, its strips with their own thickness.
double open_torsion_mm4(double width_mm, double sheet_mm, const std::vector<Strip>& strips);

// The sheet that counts in bending: t(1 - Σ(1 - λ) b/w), never under 0.
double bending_sheet_mm(double width_mm, double sheet_mm, const std::vector<Strip>& strips);

}  // namespace tinworm::boxes
