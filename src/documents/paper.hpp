// A sheet of paper that text runs down: upright, with a margin to file it by, the caution, the
// survey's fingerprint and the page's number at its foot.
#pragma once

#include <string>
#include <vector>

#include "scene/page.hpp"
#include "scene/sheet.hpp"

namespace tinworm::documents {

struct Paper {
  double width_mm = 210, height_mm = 297;
  scene::Area text;  // what sections may fill
};

// Letter where drawings are on letter, else A4: nobody reads columns of text on A3.
Paper upright(scene::Paper drawings);

// The same on its side: for rows that one fills in.
Paper lying(scene::Paper drawings);

// Empty but for its layer.
scene::Page blank_page(const Paper& paper);

struct Foot {
  std::string of;       // "Wherry 1200, survey of 2025-04-12, fingerprint 47a2feba572e"
  std::string caution;  // goes with every page
};

// Writes the foot of that page of the paper, "page 3 of 12" among it, and sets its label.
void write_foot(scene::Page& page, const Paper& paper, const Foot& foot, std::size_t number,
                std::size_t pages, const scene::Measure& measure);

}  // namespace tinworm::documents
