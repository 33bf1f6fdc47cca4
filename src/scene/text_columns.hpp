// Paragraphs under headings, set in columns side by side that end at about one height.
#pragma once

#include <string>
#include <vector>

#include "scene/setting.hpp"

namespace tinworm::scene {

struct Paragraph {
  std::string text;
  std::string link;  // of its first line, to a place of any page; empty: none
  bool heading = false;
};

struct ColumnLine {
  std::string text;
  Style style;
  std::string link;
  double before_mm = 0;    // over it, unless it is the first of its column
  bool with_next = false;  // not to be parted from the line after it
};

// Broken into lines no wider than `width_mm`. A heading isn't parted from what follows, nor a short
// paragraph, nor a lone first or last line from a long one.
std::vector<ColumnLine> column_lines(const std::vector<Paragraph>& paragraphs, double width_mm,
                                     const Measure& measure);

struct ColumnPlace {
  std::size_t column = 0;
  double y_mm = 0;  // top of the line, from the top of the columns
};

// Where the lines from `first` on stand, as many as find room: in the lowest columns that hold all
// the rest, else in columns of `most_mm`. At least one line is placed, however low they are.
std::vector<ColumnPlace> set_in_columns(const std::vector<ColumnLine>& lines, std::size_t first,
                                        std::size_t columns, double most_mm);

}  // namespace tinworm::scene
