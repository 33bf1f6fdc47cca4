// Tables for a terminal.
#pragma once

#include <string>
#include <vector>

namespace tinworm::output {

enum class Align { left, right };

struct Column {
  std::string title;
  Align align = Align::left;
};

using Row = std::vector<std::string>;  // a cell for each column, UTF-8 on one line

// Columns as wide as their widest cell, two spaces apart. Where that is over `width`, columns of
// words (aligned left) are wrapped, the widest first, none under 14. Titles first; no rules, no
// trailing spaces. Empty without rows; columns that are empty in every row are left out.
std::string table(const std::vector<Column>& columns, const std::vector<Row>& rows, int width,
                  const std::string& indent = "  ");

}  // namespace tinworm::output
