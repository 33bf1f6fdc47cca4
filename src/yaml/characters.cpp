#include "yaml/characters.hpp"

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

bool looks_like_utf16(std::string_view source) {
  if (source.starts_with("\xFF\xFE") || source.starts_with("\xFE\xFF")) return true;
  return source.size() >= 4 && ((source[0] == '\0' && source[2] == '\0' && source[1] != '\0') ||
                                (source[1] == '\0' && source[3] == '\0' && source[0] != '\0'));
}

Problem refuse(Place place, std::string what, std::string cure) {
  return {place, std::move(what), "", "", std::move(cure)};
}

std::optional<Problem> refusal_of(std::string_view source, std::size_t offset, Character character,
                                  Place place) {
  if (!character.valid)
    return refuse(place,
                  fmt::format("the byte 0x{:02X} is not UTF-8 text", byte_at(source, offset)),
                  "save the file as UTF-8");
  if (character.code == 0)
    return refuse(place, "a NUL byte stands here, so this is no text file",
                  "save the file as plain UTF-8 text");
  if (character.code == '\r') {
    if (offset + 1 < source.size() && source[offset + 1] == '\n') return {};
    return refuse(place, "the line ends in a carriage return alone",
                  "save the file with line feeds (Unix) or CR LF (Windows) as line ends");
  }
  if (character.code == 0xFEFF)
    return refuse(place, "an invisible byte order mark (U+FEFF) stands inside the text",
                  "delete it");
  if (is_control(character.code) && character.code != '\n')
    return refuse(
        place,
        fmt::format("an invisible control character ({}) stands here", code_name(character.code)),
        "delete it");
  return {};
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

bool is_control(char32_t code) {
  if (code == '\t' || code == '\n') return false;
  return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x2028 || code == 0x2029 ||
         code == 0xFFFE || code == 0xFFFF;
}

std::string code_name(char32_t code) {
  return fmt::format("U+{:04X}", static_cast<unsigned>(code));
}

std::string printable(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const bool shown = character.valid && !is_control(character.code) && character.code != '\t' &&
                       character.code != '\n' && character.code != 0xFEFF;
    out += shown ? text.substr(i, character.bytes) : replacement;
    i += character.bytes;
  }
  return out;
}

std::optional<Problem> bad_character(std::string_view source) {
  if (looks_like_utf16(source))
    return refuse({}, "the file is UTF-16, which is not read", "save it as UTF-8");
  Place place{1, 1};
  for (std::size_t i = 0; i < source.size();) {
    const Character character = character_at(source, i);
    if (auto refusal = refusal_of(source, i, character, place)) return refusal;
    if (character.code == '\n') {
      place = {place.line + 1, 1};
    } else {
      ++place.column;
    }
    i += character.bytes;
  }
  return {};
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
