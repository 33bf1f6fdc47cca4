// What a thin-walled section has against twist and bending. Steel throughout, so that fractions of
// these are fractions of stiffness.
#pragma once

#include <vector>

#include "boxes/section.hpp"

namespace tinworm::boxes {

// Torsion constant of the closed cells, mm⁴, by Bredt-Batho: one rate of twist for all cells, flow
// q_i for a unit of it from q_i ∮ds/t - Σ_j q_j ∫ds/t over what i and j share = 2 A_i, and
// J = Σ 2 A_i q_i; for one cell 4 A²/∮ds/t (Johnson, Advanced Structural Mechanics, 2000,
// eq. 2.40). `shear_mm` is for each wall its sheet in shear: width / ∫ds/t. 0 is no wall: cells
// beside it are one.
double closed_torsion_mm4(const Section& section, const std::vector<double>& shear_mm);

// Σ s t³/3 of all walls: what is left of an open section, little in a closed one.
double open_torsion_mm4(const Section& section, const std::vector<double>& sheet_mm);

// Second moments of area about axes through the centroid, walls as lines of their sheet.
struct Bending {
  double area_mm2 = 0;
  geometry::Point centroid;
  double about_u_mm4 = 0;  // ∫ v² dA
  double about_v_mm4 = 0;  // ∫ u² dA
  double product_mm4 = 0;  // ∫ u v dA
};
Bending bending(const Section& section, const std::vector<double>& sheet_mm);

}  // namespace tinworm::boxes
