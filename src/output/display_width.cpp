#include "output/display_width.hpp"

#include <algorithm>
#include <cstdint>
#include <iterator>

namespace tinworm::output {
namespace {

struct Character {
  char32_t code = 0;
  std::size_t bytes = 1;
};

Character first_character(std::string_view text) {
  const auto lead = static_cast<std::uint8_t>(text[0]);
  const std::size_t bytes = lead < 0x80       ? 1
                            : lead >> 5 == 6  ? 2
                            : lead >> 4 == 14 ? 3
                            : lead >> 3 == 30 ? 4
                                              : 0;
  if (bytes == 0 || bytes > text.size()) return {0xFFFD, 1};
  char32_t code = bytes == 1 ? lead : lead & (0xFF >> (bytes + 1));
  for (std::size_t i = 1; i < bytes; ++i) {
    const auto next = static_cast<std::uint8_t>(text[i]);
    if (next >> 6 != 2) return {0xFFFD, 1};
    code = code << 6 | (next & 0x3F);
  }
  return {code, bytes};
}

struct Range {
  char32_t first, last;
};

// Blocks of Unicode 15, coarse where a block is all but wholly of one width.
constexpr Range no_width[] = {
    {0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD}, {0x064B, 0x065F}, {0x1AB0, 0x1AFF},
    {0x1DC0, 0x1DFF}, {0x200B, 0x200F}, {0x202A, 0x202E}, {0x2060, 0x2064}, {0x20D0, 0x20F0},
    {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F}, {0xFEFF, 0xFEFF}};
constexpr Range wide[] = {
    {0x1100, 0x115F},   {0x2E80, 0x303E},   {0x3041, 0x33FF},   {0x3400, 0x4DBF},
    {0x4E00, 0x9FFF},   {0xA000, 0xA4CF},   {0xA960, 0xA97F},   {0xAC00, 0xD7A3},
    {0xF900, 0xFAFF},   {0xFE30, 0xFE6F},   {0xFF00, 0xFF60},   {0xFFE0, 0xFFE6},
    {0x1F300, 0x1F64F}, {0x1F680, 0x1F6FF}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD}};

template <std::size_t N>
bool in(const Range (&ranges)[N], char32_t code) {
  return std::any_of(std::begin(ranges), std::end(ranges), [code](const Range& range) {
    return code >= range.first && code <= range.last;
  });
}

int width_of(char32_t code) {
  if (code < 0x20 || code == 0x7F || in(no_width, code)) return 0;
  return in(wide, code) ? 2 : 1;
}

// The bytes of `word` that fit in `width` columns, at least one character.
std::size_t fitting(std::string_view word, int width) {
  std::size_t end = 0;
  int columns = 0;
  while (end < word.size()) {
    const Character character = first_character(word.substr(end));
    columns += width_of(character.code);
    if (columns > width && end > 0) break;
    end += character.bytes;
  }
  return end;
}

void wrap_paragraph(std::string_view text, int width, std::vector<std::string>& lines) {
  std::string line;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    std::string_view word = text.substr(0, space);
    text.remove_prefix(space == text.npos ? text.size() : space + 1);
    if (word.empty()) continue;
    if (!line.empty() && display_width(line) + 1 + display_width(word) > width) {
      lines.push_back(std::move(line));
      line.clear();
    }
    if (!line.empty()) line += ' ';
    while (display_width(word) > width && line.empty()) {
      const std::size_t end = fitting(word, width);
      if (end == word.size()) break;
      lines.emplace_back(word.substr(0, end));
      word.remove_prefix(end);
    }
    line += word;
  }
  lines.push_back(std::move(line));
}

}  // namespace

int display_width(std::string_view text) {
  int columns = 0;
  while (!text.empty()) {
    const Character character = first_character(text);
    columns += width_of(character.code);
    text.remove_prefix(character.bytes);
  }
  return columns;
}

std::vector<std::string> wrapped(std::string_view text, int width) {
  std::vector<std::string> lines;
  while (true) {
    const std::size_t end = text.find('\n');
    wrap_paragraph(text.substr(0, end), std::max(width, 1), lines);
    if (end == text.npos) return lines;
    text.remove_prefix(end + 1);
  }
}

std::string indented(std::string_view text, int width, std::string_view first,
                     std::string_view rest) {
  std::string result;
  const int room = width - std::max(display_width(first), display_width(rest));
  for (const std::string& line : wrapped(text, room)) {
    result.append(result.empty() ? first : rest).append(line).append("\n");
  }
  return result;
}

}  // namespace tinworm::output
