// A table as a value: its columns, its rows, where they lead.
#pragma once

#include <string>
#include <vector>

#include "scene/page.hpp"

namespace tinworm::documents {

struct Column {
  std::string heading;
  double share = 1;  // of the width
  scene::Align align = scene::Align::left;
};

struct Row {
  std::vector<std::string> cells;  // as many as columns
  std::string link;                // of its first cell, to a place of any page; empty: none
  std::string place;               // a name for links to this row; empty: none
  bool strong = false;
};

}  // namespace tinworm::documents
