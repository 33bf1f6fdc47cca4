// Where there is still room on a page: what is drawn, what is written, what leads where. Labels,
// callouts and rings ask here before they sit down.
#pragma once

#include <vector>

#include "scene/page.hpp"

namespace tinworm::scene {

class FreeSpace {
 public:
  explicit FreeSpace(Area whole);

  void trace(const std::vector<Polyline>& shape);  // line work
  void cover(const std::vector<Polyline>& shape);  // a zone or a spot, with all that it encloses
  void write(const Area& area);                    // words: nothing may lie on them
  void lead(At from, At to);                       // a leader

  bool within(const Area& area) const { return whole_.contains(area); }
  bool blank(const Area& area) const;      // within the whole; neither drawn nor written on
  bool uncovered(const Area& area) const;  // the same, but line work may run there
  bool unwritten(const Area& area) const;  // within the whole; no words there
  // How many leaders a new one would cross; words in the way count as `never`.
  int crossings(At from, At to, const Area& own_words) const;
  bool leader_crosses(const Area& area) const;  // an older leader runs through it
  double over_zones_mm(At from, At to) const;   // how far a line runs over zones and spots

  static constexpr int never = 1000;

 private:
  enum Mark : char { nothing, line, zone };
  struct Counted {
    int marks = 0, zones = 0;
  };
  Counted drawn(const Area& area) const;  // marks in it
  void count() const;
  void mark(At at, Mark mark);
  std::size_t cell(int column, int row) const { return std::size_t(row) * columns_ + column; }

  static constexpr double pitch_mm_ = 0.5;
  Area whole_;
  int columns_, rows_;
  std::vector<Mark> drawn_;
  // Marks above and to the left of each corner, so that an area is counted from its four corners.
  // Empty: to be counted anew.
  mutable std::vector<Counted> counted_;
  std::vector<Area> words_;
  std::vector<std::pair<At, At>> leaders_;
};

bool crosses(At a, At b, At c, At d);        // two segments
bool crosses(At a, At b, const Area& area);  // a segment and an area's inside
At nearest_on(const Area& area, At at);      // of its edge and inside

}  // namespace tinworm::scene
