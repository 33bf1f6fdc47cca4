// Torsion constants against a second method: Prandtl's membrane, solved on a grid.
//
// Source: L. Prandtl's membrane analogy (1903), as in any book on elasticity (memory): with ∇²φ =
// -2 in the wall, φ = 0 outside and a level of its own over each cell, held up by the load on it,
// J = 2 ∫φ dA over wall and cells. No thin-wall assumption is in it; walls here are 2 to 6 % of the
// box's side, so the two agree within 2 % (corners).
#include <algorithm>
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "boxes/stiffness.hpp"
#include "boxes/strip.hpp"
#include "geometry/point.hpp"

namespace tinworm::boxes {
namespace {

using geometry::Rect;

struct Solid {
  double width_mm, height_mm;
  std::vector<std::vector<Rect>> cells;  // each the union of rectangles
};

// Nodes every h mm; five-point differences, relaxed until nothing moves.
class Membrane {
 public:
  Membrane(const Solid& solid, double h)
      : h_(h),
        columns_(node(solid.width_mm) + 1),
        rows_(node(solid.height_mm) + 1),
        cell_(static_cast<std::size_t>(columns_) * rows_, wall),
        level_(cell_.size(), 0) {
    for (const auto& rects : solid.cells) add_cell(rects);
  }

  double torsion_mm4() {
    while (relax() > 1e-9 * std::max(1.0, *std::max_element(level_.begin(), level_.end()))) {
    }
    double sum = 0;  // the edge stays at 0
    for (const double level : level_) sum += level;
    return 2 * sum * h_ * h_;
  }

 private:
  static constexpr int wall = -1;
  static constexpr double over = 1.8;

  int node(double mm) const { return static_cast<int>(std::lround(mm / h_)); }
  double load() const { return 2 * h_ * h_; }
  std::size_t index(int row, int column) const {
    return static_cast<std::size_t>(row) * columns_ + column;
  }

  void add_cell(const std::vector<Rect>& rects) {
    const int cell = static_cast<int>(nodes_.size());
    nodes_.emplace_back();
    for (const Rect& rect : rects) {
      for (int row = node(rect.v.low); row <= node(rect.v.high); ++row) {
        for (int column = node(rect.u.low); column <= node(rect.u.high); ++column) {
          const std::size_t i = index(row, column);
          if (cell_[i] == wall) nodes_.back().push_back(i);
          cell_[i] = cell;
        }
      }
    }
  }

  // The whole cell moves as one: its neighbours in the wall pull, the load on all its nodes pushes.
  double relax_cell(int cell) {
    double pull = 0, links = 0;
    for (const std::size_t i : nodes_[cell]) {
      for (const std::size_t j : {i - 1, i + 1, i - columns_, i + columns_}) {
        if (cell_[j] == cell) continue;
        pull += level_[j] - level_[i];
        links += 1;
      }
    }
    pull += load() * static_cast<double>(nodes_[cell].size());
    const double step = over * pull / links;
    for (const std::size_t i : nodes_[cell]) level_[i] += step;
    return std::abs(step);
  }

  double relax() {
    double moved = 0;
    for (int row = 1; row + 1 < rows_; ++row) {
      for (int column = 1; column + 1 < columns_; ++column) {
        const std::size_t i = index(row, column);
        if (cell_[i] != wall) continue;
        const double around =
            level_[i - columns_] + level_[i + columns_] + level_[i - 1] + level_[i + 1];
        const double step = over * ((around + load()) / 4 - level_[i]);
        level_[i] += step;
        moved = std::max(moved, std::abs(step));
      }
    }
    for (int cell = 0; cell < static_cast<int>(nodes_.size()); ++cell) {
      moved = std::max(moved, relax_cell(cell));
    }
    return moved;
  }

  double h_;
  int columns_, rows_;
  std::vector<int> cell_;  // of each node
  std::vector<double> level_;
  std::vector<std::vector<std::size_t>> nodes_;  // of each cell
};

// The solver itself: a full square of side a has J = 0.1406 a⁴ (Saint-Venant, as in any handbook;
// memory).
TEST(Membrane, SolvesTheSquareBar) {
  EXPECT_NEAR(Membrane({20, 20, {}}, 0.5).torsion_mm4() / std::pow(20, 4), 0.1406, 0.0005);
}

double formula(const Section& section, const std::vector<double>& sheet_mm) {
  return closed_torsion_mm4(section, sheet_mm) + open_torsion_mm4(section, sheet_mm);
}

TEST(Membrane, OneCell) {
  const struct {
    double width, height, left, right, bottom, top;  // mm: outside, and the four sheets
  } cases[] = {
      {102, 102, 2, 2, 2, 2}, {104, 64, 4, 4, 4, 4}, {103, 62, 2, 4, 2, 2}, {102, 63, 2, 2, 4, 2}};
  for (const auto& c : cases) {
    const double l = c.left / 2, r = c.width - c.right / 2, b = c.bottom / 2,
                 t = c.height - c.top / 2;
    const Section lines{{{l, b}, {r, b}, {r, t}, {l, t}}, {{3, 0}, {1, 2}, {0, 1}, {2, 3}}};
    const double expected =
        Membrane(
            {c.width, c.height, {{{{c.left, c.width - c.right}, {c.bottom, c.height - c.top}}}}},
            0.5)
            .torsion_mm4();
    EXPECT_NEAR(formula(lines, {c.left, c.right, c.bottom, c.top}) / expected, 1, 0.02)
        << c.width << " x " << c.height;
  }
}

TEST(Membrane, TwoCells) {
  // A box 104 by 64 outside, with a middle wall at u, so thick.
  const struct {
    double u, middle, outer;
  } cases[] = {{52, 2, 4}, {32, 2, 4}, {32, 4, 2}, {22, 4, 4}};
  for (const auto& c : cases) {
    const double o = c.outer / 2, r = 104 - o, t = 64 - o;
    const Section lines{{{o, o}, {c.u, o}, {r, o}, {r, t}, {c.u, t}, {o, t}},
                        {{0, 1, 2, 3, 4, 5, 0}, {1, 4}}};
    const geometry::Interval up{c.outer, 64 - c.outer};
    const double expected =
        Membrane(
            {104,
             64,
             {{{{c.outer, c.u - c.middle / 2}, up}}, {{{c.u + c.middle / 2, 104 - c.outer}, up}}}},
            0.5)
            .torsion_mm4();
    EXPECT_NEAR(formula(lines, {c.outer, c.middle}) / expected, 1, 0.02) << c.u << " " << c.middle;
  }
}

// A strip all along a wall, thinned from within: what is kept of the twist agrees within 0.015. The
// grid's keeps a little more: the middle of a sheet thinned from one side moves outwards, and the
// cell is larger for it.
TEST(Membrane, ALongStrip) {
  const struct {
    double width, lambda;
  } cases[] = {{30, 0.5}, {60, 0.5}, {30, 0.25}, {90, 0.75}};
  const Section lines{{{2, 2}, {102, 2}, {102, 62}, {2, 62}}, {{0, 1}, {1, 2}, {2, 3}, {3, 0}}};
  const Rect hole{{4, 100}, {4, 60}};
  const double sound_grid = Membrane({104, 64, {{hole}}}, 0.5).torsion_mm4();
  const double sound = formula(lines, {4, 4, 4, 4});
  for (const auto& c : cases) {
    const Rect thinned{{52 - c.width / 2, 52 + c.width / 2}, {4 * c.lambda, 4}};
    const double grid = Membrane({104, 64, {{hole, thinned}}}, 0.5).torsion_mm4();
    const std::vector<Strip> strips{{0, 1e6, c.width, c.lambda}};
    const double left = closed_torsion_mm4(lines, {100 / shear_path(100, 4, strips), 4, 4, 4}) +
                        open_torsion_mm4(100, 4, strips) + open_torsion_mm4(lines, {0, 4, 4, 4});
    EXPECT_NEAR(left / sound, grid / sound_grid, 0.015) << c.width << " at " << c.lambda;
  }
}

}  // namespace
}  // namespace tinworm::boxes
