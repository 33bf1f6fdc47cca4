#include "weighing/holes.hpp"

#include <algorithm>

namespace tinworm::weighing {

quantity::Size in_a_row(const std::vector<quantity::Size>& holes) {
  quantity::Size row = holes.front();
  for (std::size_t i = 1; i < holes.size(); ++i) {
    row.along_mm += holes[i].along_mm;
    row.across_mm = std::max(row.across_mm, holes[i].across_mm);
  }
  return row;
}

double area_mm2(const std::vector<quantity::Size>& holes) {
  double area_mm2 = 0;
  for (const quantity::Size& hole : holes) area_mm2 += hole.along_mm * hole.across_mm;
  return area_mm2;
}

double largest_mm(const std::vector<quantity::Size>& holes) {
  double largest_mm = 0;
  for (const quantity::Size& hole : holes)
    largest_mm = std::max({largest_mm, hole.along_mm, hole.across_mm});
  return largest_mm;
}

}  // namespace tinworm::weighing
