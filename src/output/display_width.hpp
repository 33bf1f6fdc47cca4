// How many columns of a terminal a text takes, and cutting it into lines.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tinworm::output {

// Columns of UTF-8 text on a terminal: combining marks and zero-width characters take none, wide
// East Asian characters (Unicode UAX #11, W and F) and pictures two. A byte that is no UTF-8 takes
// one.
int display_width(std::string_view text);

// `text` on lines of at most `width` columns, broken at spaces; a word longer than a line is cut.
// A line break in the text stays one. At least one line, which may be empty.
std::vector<std::string> wrapped(std::string_view text, int width);

// The lines with `first` before the first and `rest` before the others, each ended by a newline.
std::string indented(std::string_view text, int width, std::string_view first,
                     std::string_view rest);

}  // namespace tinworm::output
