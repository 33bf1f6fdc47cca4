// What a spreadsheet puts into cells that isn't what was read: formulas and what became of them,
// marks of text, quotes, a dash for nothing; and characters that no survey may hold.
#pragma once

#include <vector>

#include "survey/csv_records.hpp"
#include "survey/field_sheet.hpp"

namespace tinworm::survey {

// Of the first row. While it has any, no cell can be told.
std::vector<SheetProblem> marks_in_headings(const Record& headings);

// Of all rows below the first. The cells are emptied, so that the rest of the sheet can be read and
// checked; a row whose zone or station is among them, or that says nothing without them, is emptied
// as a whole.
std::vector<SheetProblem> take_out_marks(std::vector<Record>& records);

}  // namespace tinworm::survey
