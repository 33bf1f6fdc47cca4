// The bridging of a short hole against runs of our own: a square tube as plates folded at its
// corners, by finite elements. No published source; the rule in boxes/strip.hpp was fitted to other
// runs and claims 0.07 of the kept twist.
//
// Each wall is plane stress in its plane (four-node elements, shear at one point), and a frame bent
// round the section out of it; bending along the tube and twist of the plates are left out. The
// ends keep their shape and are free to warp. What the runs say:
// - With frames stiff enough that the section keeps its shape, rule and runs agree within 0.07; on
// a
//   mesh twice as fine within 0.08, the runs the lower.
// - In a tube of bare sheet held in shape at its ends alone, a large hole lets the section lean
// over
//   and far less is kept than the rule says: 0.39 for 0.85 with a hole of 75 x 100 in a wall of
//   100.
#include <array>
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "boxes/kept.hpp"

namespace tinworm::boxes {
namespace {

constexpr double side_mm = 100, sheet_mm = 1, length_mm = 800;
constexpr int per_side = 8, around = 4 * per_side, along = 32;
constexpr double step_mm = side_mm / per_side, reach_mm = length_mm / along;
constexpr double poisson = 0.3;  // E = 1

using Vector3 = std::array<double, 3>;  // x along the tube

class Tube {
 public:
  // A hole in the middle of one wall and of the length, so many elements wide and long; the
  // sheet so many times as stiff as it is when bent round the section.
  Tube(int wide, int deep, double frames)
      : wide_(wide), long_(deep), frames_(frames), matrix_(size * band, 0), right_(size, 0) {
    for (int j = 0; j < along; ++j) {
      for (int i = 0; i < around; ++i) {
        if (!in_hole(i, j)) add_plate(i, j);
      }
    }
    for (int j = 0; j <= along; ++j) {
      for (int i = 0; i < around; ++i) add_hinge(i, j);
    }
  }

  // Against a turn of one end by 1, the other held: twice the energy.
  double stiffness() {
    const std::vector<double> springs = matrix_;
    hold_ends();
    solve();
    double energy = 0;
    for (int row = 0; row < size; ++row) {
      energy += springs[at(row, row)] * right_[row] * right_[row];
      for (int column = std::max(0, row - band + 1); column < row; ++column) {
        energy += 2 * springs[at(row, column)] * right_[row] * right_[column];
      }
    }
    return energy;
  }

 private:
  static constexpr int size = 3 * around * (along + 1);
  static constexpr int band = 6 * around;  // of the lower half, the diagonal in it

  static int at(int row, int column) { return row * band + (row - column); }
  static int node(int i, int j) { return j * around + (i + around) % around; }

  bool in_hole(int i, int j) const {
    return std::abs(2 * i + 1 - per_side) < wide_ && std::abs(2 * j + 1 - along) < long_;
  }

  static Vector3 tangent(int i) {  // of the segment from node i to the next
    constexpr std::array<Vector3, 4> ways{{{0, 1, 0}, {0, 0, 1}, {0, -1, 0}, {0, 0, -1}}};
    return ways[(i + around) % around / per_side];
  }

  static Vector3 normal(int i) {
    const Vector3 t = tangent(i);
    return {0, -t[2], t[1]};
  }

  static Vector3 place(int i) {  // in the section, from its middle
    Vector3 place{0, -side_mm / 2, -side_mm / 2};
    for (int k = 0; k < i; ++k) {
      for (int d = 1; d < 3; ++d) place[d] += step_mm * tangent(k)[d];
    }
    return place;
  }

  // Adds energy weight/2 · (Σ figures · displacements)².
  struct Term {
    int node;
    Vector3 figures;
  };
  template <std::size_t count>
  void add(double weight, const std::array<Term, count>& terms) {
    for (const Term& a : terms) {
      for (const Term& b : terms) {
        for (int d = 0; d < 3; ++d) {
          for (int e = 0; e < 3; ++e) {
            const int row = 3 * a.node + d, column = 3 * b.node + e;
            if (column <= row) matrix_[at(row, column)] += weight * a.figures[d] * b.figures[e];
          }
        }
      }
    }
  }

  // Strains at (p, q) of the element, 0 to 1 along x and round the section.
  void add_plate(int i, int j) {
    const Vector3 t = tangent(i);
    const std::array<int, 4> nodes{node(i, j), node(i, j + 1), node(i + 1, j), node(i + 1, j + 1)};
    const auto terms = [&](double p, double q, double x_x, double t_t, double shear) {
      const std::array<double, 4> dx{-(1 - q) / reach_mm, (1 - q) / reach_mm, -q / reach_mm,
                                     q / reach_mm};
      const std::array<double, 4> ds{-(1 - p) / step_mm, -p / step_mm, (1 - p) / step_mm,
                                     p / step_mm};
      std::array<Term, 4> made;
      for (int k = 0; k < 4; ++k) {
        const double turned = t_t * ds[k] + shear * dx[k];
        made[k] = {nodes[k], {x_x * dx[k] + shear * ds[k], turned * t[1], turned * t[2]}};
      }
      return made;
    };
    const double volume = sheet_mm * step_mm * reach_mm;
    const double g = (1 - std::sqrt(1.0 / 3)) / 2;
    for (const double p : {g, 1 - g}) {
      for (const double q : {g, 1 - g}) {
        // (εx + ν εs)² / (1 - ν²) + εs² is the plane-stress energy.
        add(volume / 4 / (1 - poisson * poisson), terms(p, q, 1, poisson, 0));
        add(volume / 4, terms(p, q, 0, 1, 0));
      }
    }
    add(volume / 2 / (1 + poisson), terms(0.5, 0.5, 0, 0, 1));
  }

  // The sheet bent at node i: the turn of the segment after it less that of the one before.
  void add_hinge(int i, int j) {
    const auto there = [&](int k) {  // share of the station's length that has sheet
      return (j > 0 && !in_hole(k, j - 1) ? 0.5 : 0.0) + (j < along && !in_hole(k, j) ? 0.5 : 0.0);
    };
    const double share = std::min(there((i + around - 1) % around), there(i));
    const double stiff = frames_ * std::pow(sheet_mm, 3) / 12 / (1 - poisson * poisson);
    const Vector3 before = normal(i - 1), after = normal(i);
    std::array<Term, 3> terms{
        {{node(i - 1, j), before}, {node(i, j), {}}, {node(i + 1, j), after}}};
    for (int d = 0; d < 3; ++d) terms[1].figures[d] = -(before[d] + after[d]);
    for (Term& term : terms) {
      for (double& figure : term.figures) figure /= step_mm;
    }
    add(stiff * share * reach_mm / step_mm, terms);
  }

  void hold(int freedom, double value) {
    for (int other = std::max(0, freedom - band + 1); other < std::min(size, freedom + band);
         ++other) {
      double& entry = matrix_[other <= freedom ? at(freedom, other) : at(other, freedom)];
      if (other != freedom) right_[other] -= entry * value;
      entry = other == freedom ? 1 : 0;
    }
    right_[freedom] = value;
    held_[freedom] = true;
  }

  void hold_ends() {
    for (int i = 0; i < around; ++i) {
      const Vector3 from_axis = place(i);
      for (int d = 1; d < 3; ++d) hold(3 * node(i, 0) + d, 0);
      hold(3 * node(i, along) + 1, -from_axis[2]);
      hold(3 * node(i, along) + 2, from_axis[1]);
    }
    hold(0, 0);
    // Nodes with no sheet about them move nothing.
    for (int freedom = 0; freedom < size; ++freedom) {
      if (matrix_[at(freedom, freedom)] < 1e-12) hold(freedom, 0);
    }
    for (int i = 0; i < size; ++i) {
      if (!held_[i]) matrix_[at(i, i)] *= 1 + 1e-10;
    }
  }

  void solve() {  // Cholesky within the band
    for (int row = 0; row < size; ++row) {
      const int first = std::max(0, row - band + 1);
      for (int column = first; column <= row; ++column) {
        double sum = matrix_[at(row, column)];
        for (int k = std::max(first, column - band + 1); k < column; ++k) {
          sum -= matrix_[at(row, k)] * matrix_[at(column, k)];
        }
        matrix_[at(row, column)] =
            column == row ? std::sqrt(sum) : sum / matrix_[at(column, column)];
      }
    }
    for (int row = 0; row < size; ++row) {
      for (int k = std::max(0, row - band + 1); k < row; ++k) {
        right_[row] -= matrix_[at(row, k)] * right_[k];
      }
      right_[row] /= matrix_[at(row, row)];
    }
    for (int row = size; row-- > 0;) {
      right_[row] /= matrix_[at(row, row)];
      for (int k = std::max(0, row - band + 1); k < row; ++k) {
        right_[k] -= matrix_[at(row, k)] * right_[row];
      }
    }
  }

  int wide_, long_;
  double frames_;
  std::vector<double> matrix_, right_;
  std::vector<bool> held_ = std::vector<bool>(size, false);
};

constexpr double bare = 1, shape_kept = 1e6;

// Of the twist, by the rule, with a hole in the middle of one wall.
double by_rule(int wide, int deep) {
  body::Box box;
  box.to_mm = length_mm;
  box.points = {{"a", {0, 0}}, {"b", {100, 0}}, {"c", {100, 100}}, {"d", {0, 100}}};
  box.walls = {{"a b", 51, {}}, {"b c d a", 51, {}}};
  const double half_mm = deep * reach_mm / 2;
  const Strip hole{length_mm / 2 - half_mm, length_mm / 2 + half_mm, wide * step_mm, 0};
  return kept(box, {{sheet_mm, {hole}}, {sheet_mm, {}}}).twist;
}

TEST(Hole, TheModelOfASoundTubeIsBredts) {
  const double bredt =
      sheet_mm * std::pow(side_mm, 3) / (2 * (1 + poisson)) / length_mm;  // G J / L
  EXPECT_NEAR(Tube(0, 0, bare).stiffness() / bredt, 1, 1e-3);
}

TEST(Hole, KeepsWhatATubeOfKeptShapeKeeps) {
  const double sound = Tube(0, 0, shape_kept).stiffness();
  const struct {
    int wide, deep;  // elements of 12.5 by 25 mm
  } cases[] = {{2, 4}, {2, 12}, {4, 2}, {4, 8}, {6, 4}};
  for (const auto& c : cases) {
    const double runs = Tube(c.wide, c.deep, shape_kept).stiffness() / sound;
    EXPECT_NEAR(by_rule(c.wide, c.deep), runs, 0.08) << c.wide << " wide, " << c.deep << " long";
  }
}

// Kept as a record of where the rule ends, not as a wish.
TEST(Hole, ATubeThatLeansOverKeepsLessThanTheRule) {
  const double sound = Tube(0, 0, bare).stiffness();
  EXPECT_NEAR(Tube(2, 4, bare).stiffness() / sound, by_rule(2, 4), 0.05);
  EXPECT_LT(Tube(6, 4, bare).stiffness() / sound, by_rule(6, 4) - 0.3);
}

}  // namespace
}  // namespace tinworm::boxes
