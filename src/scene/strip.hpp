// The title strip along the foot of a sheet, and the frame round it.
#pragma once

#include <string>
#include <vector>

#include "scene/diagram.hpp"
#include "scene/page.hpp"

namespace tinworm::scene {

struct StripWords {
  std::string sheet;   // "Structure, skin off"
  int scale = 0;       // 0: no drawing on this page, no scale
  std::string number;  // "1 of 3"
};

struct StripCell {
  std::string label, value, second;
  double share = 1;  // of the width
  bool strong = false;
  bool bar = false;  // the scale bar stands in it
};

void draw_cells(Page& page, const Area& strip, const std::vector<StripCell>& cells, int scale,
                quantity::Units units, const Measure& measure);

// Car, date, surveyor if signed, verdict, sheet, scale with its bar, page, fingerprint; with
// private keys the owner, registration, chassis number and place.
void draw_strip(Page& page, const Area& strip, const weighing::Result& result,
                const DiagramOptions& options, const StripWords& words, const Measure& measure);

}  // namespace tinworm::scene
