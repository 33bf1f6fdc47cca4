#include "attachments/plain_table.hpp"

#include <charconv>
#include <fstream>
#include <optional>

#include <fmt/format.h>

namespace tinworm::attachments {
namespace {

constexpr std::size_t tail_bytes = 1024;          // where readers look for the end (7.5.5)
constexpr std::size_t most_trailer = 4096;        // ours has some 200 bytes
constexpr std::size_t entry_bytes = 20;           // of the table
constexpr unsigned long most_objects = 1u << 15;  // ours have a few thousand; a million takes 11 s

const char* const save_as_it_was = "take the file as tinworm wrote it";

tl::unexpected<Refusal> saved_anew() {
  return tl::unexpected(Refusal{"was saved anew by another program", save_as_it_was});
}

std::string bytes_at(std::ifstream& file, std::size_t at, std::size_t most) {
  std::string bytes(most, '\0');
  file.clear();
  file.seekg(static_cast<std::streamoff>(at));
  file.read(bytes.data(), static_cast<std::streamsize>(most));
  bytes.resize(static_cast<std::size_t>(file.gcount()));
  return bytes;
}

std::optional<unsigned long> number_after(std::string_view text, std::string_view word) {
  const std::size_t at = text.rfind(word);
  if (at == text.npos) return std::nullopt;
  text.remove_prefix(at + word.size());
  unsigned long number = 0;
  if (std::from_chars(text.data(), text.data() + text.size(), number).ec != std::errc())
    return std::nullopt;
  return number;
}

bool has(std::string_view text, std::string_view part) {
  return text.find(part) != text.npos;
}

}  // namespace

tl::expected<void, Refusal> has_plain_table(const std::string& path) {
  std::ifstream file(path, std::ios::binary | std::ios::ate);
  const auto end = file.tellg();
  if (!file || end < 0) return tl::unexpected(Refusal{"can't be read", "look at the path"});
  const auto size = static_cast<std::size_t>(end);
  if (!begins_like_pdf(bytes_at(file, 0, 16)))
    return tl::unexpected(Refusal{"isn't a PDF", "name a survey, or a paper that carries one"});
  const std::size_t tail_at = size - std::min(size, tail_bytes);
  const std::string tail = bytes_at(file, tail_at, tail_bytes);
  const auto table_at = number_after(tail, "startxref\n");
  if (!table_at || !has(tail, "%%EOF"))
    return tl::unexpected(Refusal{"is cut off or broken at its end", save_as_it_was});
  const std::string head = bytes_at(file, *table_at, 32);
  const auto objects = number_after(head, "xref\n0 ");
  if (!head.starts_with("xref\n0 ") || !objects || *objects > most_objects) return saved_anew();
  const std::size_t entries_at = *table_at + head.find('\n', 5) + 1;
  const std::string trailer = bytes_at(file, entries_at + *objects * entry_bytes, most_trailer);
  const std::string_view dictionary =
      std::string_view(trailer).substr(0, trailer.find("startxref"));
  if (!dictionary.starts_with("trailer") || dictionary.size() == trailer.size())
    return saved_anew();
  if (has(dictionary, "/Encrypt"))
    return tl::unexpected(Refusal{"is locked with a password", "save it without one"});
  // `#` could write any of the names another way.
  if (has(dictionary, "/Prev") || has(dictionary, "/XRefStm") || has(dictionary, "#"))
    return saved_anew();
  return {};
}

}  // namespace tinworm::attachments
