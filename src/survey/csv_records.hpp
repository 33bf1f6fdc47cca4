// Records of a CSV file (RFC 4180) as a spreadsheet saves it: commas, semicolons or tabs between
// the cells, with or without a byte order mark. The only place that knows the CSV library.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace tinworm::survey {

struct Record {
  int row = 0;                     // as a spreadsheet counts, from 1; blank lines count
  std::vector<std::string> cells;  // without spaces around them
  bool semicolons = false;         // between the cells: a comma may be a decimal comma
};

// What keeps a file from being read as CSV; it stands alone.
struct CsvMistake {
  int row = 0;  // 0: the file as a whole
  std::string what;
  std::string cure;
};

// Records with at least one cell that isn't empty. The first line tells what parts the cells.
tl::expected<std::vector<Record>, CsvMistake> csv_records(std::string_view text);

}  // namespace tinworm::survey
