#include "boxes/stiffness.hpp"

#include <cmath>
#include <utility>

namespace tinworm::boxes {
namespace {

// Gauss with the largest pivot of each column; the flows' matrix is never singular.
std::vector<double> solve(std::vector<std::vector<double>> matrix, std::vector<double> right) {
  const std::size_t size = right.size();
  for (std::size_t k = 0; k < size; ++k) {
    std::size_t pivot = k;
    for (std::size_t i = k + 1; i < size; ++i) {
      if (std::abs(matrix[i][k]) > std::abs(matrix[pivot][k])) pivot = i;
    }
    std::swap(matrix[k], matrix[pivot]);
    std::swap(right[k], right[pivot]);
    for (std::size_t i = k + 1; i < size; ++i) {
      const double factor = matrix[i][k] / matrix[k][k];
      for (std::size_t j = k; j < size; ++j) matrix[i][j] -= factor * matrix[k][j];
      right[i] -= factor * right[k];
    }
  }
  for (std::size_t k = size; k-- > 0;) {
    for (std::size_t j = k + 1; j < size; ++j) right[k] -= matrix[k][j] * right[j];
    right[k] /= matrix[k][k];
  }
  return right;
}

}  // namespace

double closed_torsion_mm4(const Section& section, const std::vector<double>& shear_mm) {
  const std::vector<Piece> walls = pieces(section, shear_mm);
  const Cells found = cells(section, walls);
  const std::size_t count = found.area_mm2.size();
  std::vector<std::vector<double>> matrix(count, std::vector<double>(count, 0));
  for (std::size_t i = 0; i < walls.size(); ++i) {
    const auto [left, right] = found.beside[i];
    if (left == right) continue;  // a flange, or a wall between outside and outside: no flow
    const double path = walls[i].length_mm / walls[i].sheet_mm;
    if (left >= 0) matrix[left][left] += path;
    if (right >= 0) matrix[right][right] += path;
    if (left < 0 || right < 0) continue;
    matrix[left][right] -= path;
    matrix[right][left] -= path;
  }
  std::vector<double> twice_area;
  for (const double area : found.area_mm2) twice_area.push_back(2 * area);
  const std::vector<double> flow = solve(std::move(matrix), twice_area);
  double torsion = 0;
  for (std::size_t i = 0; i < count; ++i) torsion += twice_area[i] * flow[i];
  return torsion;
}

double open_torsion_mm4(const Section& section, const std::vector<double>& sheet_mm) {
  double torsion = 0;
  for (std::size_t wall = 0; wall < section.walls.size(); ++wall) {
    torsion += width_mm(section, wall) * std::pow(sheet_mm[wall], 3) / 3;
  }
  return torsion;
}

Bending bending(const Section& section, const std::vector<double>& sheet_mm) {
  Bending sum;
  double first_u = 0, first_v = 0;
  for (const Piece& piece : pieces(section, sheet_mm)) {
    const geometry::Point& a = section.points[piece.from];
    const geometry::Point& b = section.points[piece.to];
    const double area = piece.length_mm * piece.sheet_mm;
    sum.area_mm2 += area;
    first_u += area * (a.u + b.u) / 2;
    first_v += area * (a.v + b.v) / 2;
    sum.about_u_mm4 += area * (a.v * a.v + a.v * b.v + b.v * b.v) / 3;
    sum.about_v_mm4 += area * (a.u * a.u + a.u * b.u + b.u * b.u) / 3;
    sum.product_mm4 += area * (2 * (a.u * a.v + b.u * b.v) + a.u * b.v + b.u * a.v) / 6;
  }
  if (sum.area_mm2 == 0) return sum;
  sum.centroid = {first_u / sum.area_mm2, first_v / sum.area_mm2};
  sum.about_u_mm4 -= sum.area_mm2 * sum.centroid.v * sum.centroid.v;
  sum.about_v_mm4 -= sum.area_mm2 * sum.centroid.u * sum.centroid.u;
  sum.product_mm4 -= sum.area_mm2 * sum.centroid.u * sum.centroid.v;
  return sum;
}

}  // namespace tinworm::boxes
