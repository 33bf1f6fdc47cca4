// Rows to fill in by hand: words to circle, and lines to write on, in cells beside each other.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "documents/flow.hpp"

namespace tinworm::documents {

constexpr double row_mm = 9;     // what a cold hand writes in; two lines of words fit
constexpr double names_mm = 34;  // the first cell of every row

struct Piece {
  std::string words;    // printed
  double write_mm = 0;  // a line so long behind them; 0: none
  bool strong = false;  // what the words after it are about
};

struct Cell {
  double share = 0;  // of what the first cell leaves of the width
  std::vector<Piece> pieces;
};

struct Entry {  // kept whole on one page
  std::string name;
  std::vector<Cell> cells;
  std::string note;    // under them, soft, broken into lines; may be empty
  bool heavy = false;  // a heavier line above: a part begins
};

// Words to circle, each a piece of its own, after what they are about (may be empty).
std::vector<Piece> to_circle(std::string_view about, const std::vector<std::string>& words);
Piece to_write(std::string about, double write_mm);

// Kept together on one page: a part and its first place.
void write_entries(Flow& flow, const std::vector<Entry>& entries);

}  // namespace tinworm::documents
