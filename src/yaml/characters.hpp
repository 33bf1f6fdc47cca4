// Characters of UTF-8 text: what may stand in a file at all, and how lines are cut for printing.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "yaml/problem.hpp"

namespace tinworm::yaml {

struct Character {
  char32_t code = 0;
  std::size_t bytes = 1;  // 1 for a byte that begins no character
  bool valid = true;  // false: overlong, surrogate, cut short, out of range (RFC 3629 section 3)
};

Character character_at(std::string_view text, std::size_t offset);

// What `code` is where no text may hold it: "an invisible control character"; empty for what may
// stand in a file, tab and line feed among it. Refused are
//   control characters, and the line breaks of other alphabets, which readers of YAML 1.1 and 1.2
//   take differently;
//   codes that are no characters, such as U+FDD0 and U+1FFFE (Unicode 15, section 23.7);
//   marks that turn the direction of writing: a listing would read otherwise than its survey;
//   characters without width and tags, the joiners U+200C and U+200D too: spots are matched over
//   the years by name, and two names that look alike must be alike. Some alphabets write with these
//   two; their words stay readable without.
std::string_view unfit(char32_t code);

// "U+0007"
std::string code_name(char32_t code);

// `text` with U+FFFD for every unfit character, tab and line feed too, and every bad byte.
std::string printable(std::string_view text);

// A file's name or an argument, made safe to show on a terminal and on paper, and still told from
// others: \n, \t, \x1b for a control character, \u202e for others that are unfit, \xff for a byte
// that is no UTF-8. Everything else as it stands, a backslash too.
std::string shown(std::string_view text);

// The same for text of several lines: line feeds and tabs are kept.
std::string shown_lines(std::string_view text);

// Why `source` is no text as it is read here: UTF-16, UTF-32, bytes that aren't UTF-8, NUL, a
// carriage return alone as line end. A byte order mark must be cut off before.
std::optional<Problem> not_text(std::string_view source);

// The same, which stands alone; else the first unfit character of each line.
Problems bad_characters(std::string_view source);

// Line `line` (from 1) without its end; "" past the last one.
std::string_view line_text(std::string_view source, int line);

// Offset in `line` of the character in `column` (from 1); its size if the line is shorter.
std::size_t offset_of(std::string_view line, int column);

}  // namespace tinworm::yaml
