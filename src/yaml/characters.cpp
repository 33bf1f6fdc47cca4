#include "yaml/characters.hpp"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

namespace tinworm::yaml {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";  // U+FFFD

unsigned byte_at(std::string_view text, std::size_t offset) {
  return static_cast<unsigned char>(text[offset]);
}

// Bytes a character takes by its first byte; 0 where none begins so.
std::size_t length_by_lead(unsigned lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead <= 0xDF) return 2;
  if (lead >= 0xE0 && lead <= 0xEF) return 3;
  if (lead >= 0xF0 && lead <= 0xF4) return 4;
  return 0;
}

char32_t least_of_length(std::size_t bytes) {
  return bytes == 4 ? 0x10000 : bytes == 3 ? 0x800 : bytes == 2 ? 0x80 : 0;
}

// Four bytes to a character, of which the highest is always NUL.
bool looks_like_utf32(std::string_view source) {
  if (source.size() < 4) return false;
  const std::string_view first = source.substr(0, 4);
  if (first == std::string_view("\xFF\xFE\0\0", 4) || first == std::string_view("\0\0\xFE\xFF", 4))
    return true;
  const auto nuls = std::count(first.begin(), first.end(), '\0');
  return nuls == 3 && (first[0] != '\0' || first[3] != '\0');
}

bool looks_like_utf16(std::string_view source) {
  if (source.starts_with("\xFF\xFE") || source.starts_with("\xFE\xFF")) return true;
  return source.size() >= 4 && ((source[0] == '\0' && source[2] == '\0' && source[1] != '\0') ||
                                (source[1] == '\0' && source[3] == '\0' && source[0] != '\0'));
}

struct Range {
  char32_t first, last;
};

// Unicode 15, by PropList.txt (Bidi_Control) and DerivedCoreProperties.txt
// (Default_Ignorable_Code_Point), without what only chooses a letter's shape (variation selectors).
// From memory.
constexpr Range direction[] = {
    {0x061C, 0x061C}, {0x200E, 0x200F}, {0x202A, 0x202E}, {0x2066, 0x2069}};
constexpr Range no_width[] = {{0x00AD, 0x00AD}, {0x034F, 0x034F}, {0x115F, 0x1160},
                              {0x17B4, 0x17B5}, {0x180E, 0x180E}, {0x200B, 0x200D},
                              {0x2060, 0x2065}, {0x206A, 0x206F}, {0x3164, 0x3164},
                              {0xFFA0, 0xFFA0}, {0xFFF0, 0xFFFB}, {0x1D173, 0x1D17A}};

template <std::size_t N>
bool in(const Range (&ranges)[N], char32_t code) {
  return std::any_of(std::begin(ranges), std::end(ranges), [code](const Range& range) {
    return code >= range.first && code <= range.last;
  });
}

bool is_control(char32_t code) {
  if (code == '\t' || code == '\n') return false;
  return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x2028 || code == 0x2029;
}

bool is_no_character(char32_t code) {
  return (code >= 0xFDD0 && code <= 0xFDEF) || (code & 0xFFFE) == 0xFFFE;
}

Problem refuse(Place place, std::string what, std::string cure) {
  return {place, std::move(what), "", "", std::move(cure)};
}

// What makes the rest of a file worth nothing: it is no text, or not as we read it.
std::optional<Problem> broken_text(std::string_view source, std::size_t offset, Character character,
                                   Place place) {
  if (!character.valid)
    return refuse(place,
                  fmt::format("the byte 0x{:02X} is not UTF-8 text", byte_at(source, offset)),
                  "save the file as UTF-8");
  if (character.code == 0)
    return refuse(place, "a NUL byte stands here, so this is no text file",
                  "save the file as plain UTF-8 text");
  if (character.code != '\r' || source.substr(offset + 1).starts_with('\n')) return {};
  return refuse(place, "the line ends in a carriage return alone",
                "save the file with line feeds (Unix) or CR LF (Windows) as line ends");
}

// Hands each character with its place to `take` until that says false.
template <typename Take>
void each_character(std::string_view source, Take take) {
  Place place{1, 1};
  for (std::size_t i = 0; i < source.size();) {
    const Character character = character_at(source, i);
    if (!take(i, character, place)) return;
    place = character.code == '\n' ? Place{place.line + 1, 1} : Place{place.line, place.column + 1};
    i += character.bytes;
  }
}

std::string shown_character(std::string_view text, std::size_t offset, Character character) {
  if (!character.valid) return fmt::format("\\x{:02x}", byte_at(text, offset));
  if (character.code == '\n') return "\\n";
  if (character.code == '\t') return "\\t";
  if (character.code == '\r') return "\\r";
  if (unfit(character.code).empty()) return std::string(text.substr(offset, character.bytes));
  const auto code = static_cast<unsigned>(character.code);
  if (code < 0x100) return fmt::format("\\x{:02x}", code);
  return code < 0x10000 ? fmt::format("\\u{:04x}", code) : fmt::format("\\U{:08x}", code);
}

}  // namespace

Character character_at(std::string_view text, std::size_t offset) {
  const unsigned lead = byte_at(text, offset);
  const std::size_t bytes = length_by_lead(lead);
  if (bytes == 1) return {lead, 1, true};
  if (bytes == 0 || offset + bytes > text.size()) return {lead, 1, false};
  char32_t code = lead & (0x7Fu >> bytes);
  for (std::size_t i = 1; i < bytes; ++i) {
    const unsigned next = byte_at(text, offset + i);
    if ((next & 0xC0u) != 0x80u) return {lead, 1, false};
    code = (code << 6) | (next & 0x3Fu);
  }
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (code < least_of_length(bytes) || surrogate || code > 0x10FFFF) return {lead, 1, false};
  return {code, bytes, true};
}

std::string_view unfit(char32_t code) {
  if (code >= 0x20 && code < 0x7F) return {};
  if (is_control(code)) return "an invisible control character";
  if (is_no_character(code)) return "a code that is no character";
  if (code == 0xFEFF) return "an invisible byte order mark";
  if (in(direction, code)) return "an invisible mark that turns the direction of writing";
  if (code >= 0xE0000 && code <= 0xE007F) return "an invisible tag character";
  if (in(no_width, code)) return "an invisible character without width";
  return {};
}

std::string code_name(char32_t code) {
  return fmt::format("U+{:04X}", static_cast<unsigned>(code));
}

std::string printable(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const bool shown = character.valid && unfit(character.code).empty() && character.code != '\t' &&
                       character.code != '\n';
    out += shown ? text.substr(i, character.bytes) : replacement;
    i += character.bytes;
  }
  return out;
}

std::string shown(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    out += shown_character(text, i, character);
    i += character.bytes;
  }
  return out;
}

std::string shown_lines(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t end = std::min(text.find_first_of("\n\t", i), text.size());
    out += shown(text.substr(i, end - i));
    if (end < text.size()) out += text[end];
    i = end + 1;
  }
  return out;
}

std::optional<Problem> not_text(std::string_view source) {
  if (looks_like_utf32(source))
    return refuse({}, "the file is UTF-32, which is not read", "save it as UTF-8");
  if (looks_like_utf16(source))
    return refuse({}, "the file is UTF-16, which is not read", "save it as UTF-8");
  std::optional<Problem> broken;
  each_character(source, [&](std::size_t offset, Character character, Place place) {
    broken = broken_text(source, offset, character, place);
    return !broken;
  });
  return broken;
}

Problems bad_characters(std::string_view source) {
  if (auto broken = not_text(source)) return {std::move(*broken)};
  Problems problems;
  each_character(source, [&](std::size_t, Character character, Place place) {
    const std::string_view what = character.code == '\r' ? "" : unfit(character.code);
    const bool told = !problems.empty() && problems.back().place.line == place.line;
    if (!what.empty() && !told)
      problems.push_back(refuse(place,
                                fmt::format("{} ({}) stands here", what, code_name(character.code)),
                                "delete it, or type the line anew"));
    return true;
  });
  return problems;
}

std::string_view line_text(std::string_view source, int line) {
  if (source.starts_with("\xEF\xBB\xBF")) source.remove_prefix(3);
  for (; line > 1; --line) {
    const auto end = source.find('\n');
    if (end == source.npos) return {};
    source.remove_prefix(end + 1);
  }
  source = source.substr(0, source.find('\n'));
  if (source.ends_with('\r')) source.remove_suffix(1);
  return source;
}

std::size_t offset_of(std::string_view line, int column) {
  std::size_t offset = 0;
  for (; column > 1 && offset < line.size(); --column) offset += character_at(line, offset).bytes;
  return offset;
}

}  // namespace tinworm::yaml
