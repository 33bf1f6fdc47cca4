// A survey typed into a spreadsheet: a row for each place that was looked at, each repair, each
// reference and how each zone was seen, as its `kind` tells; columns in any order, told by their
// headings.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "body/plan.hpp"
#include "survey/csv_records.hpp"
#include "survey/form.hpp"
#include "yaml/problem.hpp"

namespace tinworm::survey {

struct SheetProblem {
  int row = 0;
  std::string column;     // heading; empty for the row as a whole
  yaml::Problem problem;  // without a place
};

struct FieldSheet {
  std::map<int, FormLines> zones;  // for Form::filled
  bool numbered_photos = false;
  std::vector<SheetProblem> problems;
};

// Headings it knows, in the order of the printed sheet: zone, station, seen, …
const std::vector<std::string>& sheet_headings();

// "outer sill, left: rust starts at bottom seam": what stands under "hint", and is not read.
std::string hint_of(const body::Zone& zone);

// A sheet to fill in: a row for how each zone was seen, its reference and each of its stations, in
// walk-round order; the first row has the headings.
std::vector<std::vector<std::string>> blank_rows(const body::Plan& plan);

// Arranges cells by zone. What a cell says is checked when the survey made of it is read: see
// `of_sheet`. Here: headings, zones, cells without a heading or a place to belong to.
FieldSheet read_field_sheet(const std::vector<Record>& records, const body::Plan& plan);

// The problems of a survey made of `lines`, told by the row and column they come from.
std::vector<SheetProblem> of_sheet(const yaml::Problems& problems, const FormLines& lines);

// "sheet.csv: row 5, column rust: unknown word … (found …; allowed …; cure)", by row, at most 50.
std::string to_text(std::vector<SheetProblem> problems, std::string_view file,
                    int listed = yaml::problems_listed);

}  // namespace tinworm::survey
