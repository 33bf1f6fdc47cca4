#include "boxes/section.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace tinworm::boxes {
namespace {

double distance_mm(geometry::Point a, geometry::Point b) {
  return std::hypot(b.u - a.u, b.v - a.v);
}

// Half-edge 2i runs along piece i, 2i + 1 against it.
class PlaneGraph {
 public:
  PlaneGraph(const Section& section, const std::vector<Piece>& pieces)
      : section_(section), pieces_(pieces), leaving_(section.points.size()) {
    const int halves = static_cast<int>(2 * pieces.size());
    for (int half = 0; half < halves; ++half) leaving_[start(half)].push_back(half);
    for (auto& halves_there : leaving_) {
      std::sort(halves_there.begin(), halves_there.end(),
                [this](int a, int b) { return angle(a) < angle(b); });
    }
  }

  int start(int half) const {
    const Piece& piece = pieces_[half / 2];
    return half % 2 == 0 ? piece.from : piece.to;
  }

  // The next edge of the face on the left: the first clockwise from the way back.
  int next(int half) const {
    const int back = half ^ 1;
    const auto& around = leaving_[start(back)];
    const auto found = std::find(around.begin(), around.end(), back);
    return found == around.begin() ? around.back() : *std::prev(found);
  }

  // Of the face on the left; negative for the outside of a part, which is gone round backwards.
  double area_mm2(const std::vector<int>& face) const {
    double twice = 0;
    for (const int half : face) {
      const auto& a = section_.points[start(half)];
      const auto& b = section_.points[start(half ^ 1)];
      twice += a.u * b.v - b.u * a.v;
    }
    return twice / 2;
  }

 private:
  double angle(int half) const {
    const auto& a = section_.points[start(half)];
    const auto& b = section_.points[start(half ^ 1)];
    return std::atan2(b.v - a.v, b.u - a.u);
  }

  const Section& section_;
  const std::vector<Piece>& pieces_;
  std::vector<std::vector<int>> leaving_;  // half-edges by their start, anticlockwise
};

}  // namespace

Section section(const body::Box& box) {
  Section section;
  std::map<std::string, int> index;
  for (const auto& [name, point] : box.points) {
    index[name] = static_cast<int>(section.points.size());
    section.points.push_back(point);
  }
  for (const body::BoxWall& wall : box.walls) {
    std::vector<int> path;
    for (const std::string& name : body::points_on(wall.path)) path.push_back(index.at(name));
    section.walls.push_back(std::move(path));
  }
  return section;
}

double width_mm(const Section& section, std::size_t wall) {
  const auto& path = section.walls[wall];
  double width = 0;
  for (std::size_t i = 1; i < path.size(); ++i) {
    width += distance_mm(section.points[path[i - 1]], section.points[path[i]]);
  }
  return width;
}

std::vector<Piece> pieces(const Section& section, const std::vector<double>& sheet_mm) {
  std::map<std::pair<int, int>, double> sheets;
  for (std::size_t wall = 0; wall < section.walls.size(); ++wall) {
    if (sheet_mm[wall] <= 0) continue;
    const auto& path = section.walls[wall];
    for (std::size_t i = 1; i < path.size(); ++i) {
      sheets[std::minmax(path[i - 1], path[i])] += sheet_mm[wall];
    }
  }
  std::vector<Piece> pieces;
  for (const auto& [ends, sheet] : sheets) {
    const double length = distance_mm(section.points[ends.first], section.points[ends.second]);
    if (length > 0) pieces.push_back({ends.first, ends.second, length, sheet});
  }
  return pieces;
}

Cells cells(const Section& section, const std::vector<Piece>& pieces) {
  const PlaneGraph graph(section, pieces);
  Cells cells;
  cells.beside.assign(pieces.size(), {-1, -1});
  double whole_mm = 0;
  for (const Piece& piece : pieces) whole_mm += piece.length_mm;
  std::vector<bool> gone(2 * pieces.size(), false);
  for (int first = 0; first < static_cast<int>(gone.size()); ++first) {
    if (gone[first]) continue;
    std::vector<int> face;
    for (int half = first; !gone[half]; half = graph.next(half)) {
      gone[half] = true;
      face.push_back(half);
    }
    const double area = graph.area_mm2(face);
    if (area <= 1e-9 * whole_mm * whole_mm) continue;  // outside, or round an open part
    for (const int half : face) {
      cells.beside[half / 2][half % 2] = static_cast<int>(cells.area_mm2.size());
    }
    cells.area_mm2.push_back(area);
  }
  return cells;
}

}  // namespace tinworm::boxes
