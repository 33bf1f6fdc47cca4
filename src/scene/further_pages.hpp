// What found no room beside the drawings, on pages of their own.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "scene/diagram.hpp"

namespace tinworm::scene {

struct Further {
  bool needed = false;    // something was shortened on a sheet, or left to these pages
  bool parts = false;     // numbers whose names found no room on their sheet
  std::set<int> numbers;  // that appear on the sheets
  std::vector<const weighing::Spot*> worst;  // lettered places without an entry on their sheet

  void add(const Further& other);
};

// The places, changed rules, all that was not seen or is not drawn, for a sale the repairs, the
// names of the numbers. None unless needed.
std::vector<Page> further_pages(const weighing::Result& result, const Further& further,
                                const DiagramOptions& options, const Measure& measure);

}  // namespace tinworm::scene
