// A result in plain words: the verdict first, what was not seen always said, the caution last.
// Burdens are words here; their figures are in JSON, CSV and `--explain`.
#pragma once

#include <string>
#include <vector>

#include "output/table.hpp"
#include "quantity/length.hpp"
#include "weighing/result.hpp"

namespace tinworm::output {

struct TextStyle {
  int width = 100;
  quantity::Units units = quantity::Units::mm;
  bool bold = false;      // headings in bold, for a terminal
  bool terminal = false;  // it is shown, not kept
};

std::string weigh_text(const weighing::Result& result, const TextStyle& style = {});

// Which rules were changed and from what, on lines of their own; empty where none was.
std::string rules_block(const weighing::Result& result, const TextStyle& style);

// Many surveys: one line each.
std::vector<Column> weigh_line_columns();
Row weigh_line(const weighing::Result& result);

}  // namespace tinworm::output
