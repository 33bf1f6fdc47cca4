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

// A control character other than tab and line feed; also the line breaks of other alphabets, which
// readers of YAML 1.1 and 1.2 take differently.
bool is_control(char32_t code);

// "U+0007"
std::string code_name(char32_t code);

// `text` with U+FFFD for every control character, tab and line feed too, every byte
// order mark and every bad byte.
std::string printable(std::string_view text);

// The first thing in `source` that no text file holds: NUL, control characters, bytes that aren't
// UTF-8, a lone carriage return as line end, UTF-16. A byte order mark must be cut off before.
std::optional<Problem> bad_character(std::string_view source);

// Line `line` (from 1) without its end; "" past the last one.
std::string_view line_text(std::string_view source, int line);

// Offset in `line` of the character in `column` (from 1); its size if the line is shorter.
std::size_t offset_of(std::string_view line, int column);

}  // namespace tinworm::yaml
