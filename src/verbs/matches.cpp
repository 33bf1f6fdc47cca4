#include "verbs/matches.hpp"

#include <array>

#include <fmt/format.h>

namespace tinworm::verbs {
namespace {

bool is_hex(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
}

// The run of hexadecimal digits that begins at `at`.
std::string_view digits_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_hex(text[end])) ++end;
  return text.substr(at, end - at);
}

}  // namespace

std::optional<std::string> fingerprint_in(std::string_view output) {
  constexpr std::size_t whole = 64, shown = 12;
  // As JSON and the metadata of pictures write it; PNG has five NULs there (an iTXt chunk).
  constexpr std::array<std::string_view, 5> before = {"\"sha256\": \"", "\"sha256\":\"",
                                                      "SHA-256: ", "SHA-256 ",
                                                      std::string_view("SHA-256\0\0\0\0\0", 12)};
  for (const std::string_view words : before) {
    for (std::size_t at = output.find(words); at != std::string_view::npos;
         at = output.find(words, at + 1)) {
      const std::string_view digits = digits_at(output, at + words.size());
      if (digits.size() == whole) return std::string(digits);
    }
  }
  constexpr std::string_view in_text = "fingerprint ";
  for (std::size_t at = output.find(in_text); at != std::string_view::npos;
       at = output.find(in_text, at + 1)) {
    const std::string_view digits = digits_at(output, at + in_text.size());
    if (digits.size() == shown) return std::string(digits);
  }
  return std::nullopt;
}

Match match(std::string_view output, const std::string& output_file, const std::string& sha256,
            const std::string& survey_file) {
  const auto found = fingerprint_in(output);
  if (!found) return {false, fmt::format("{} holds no fingerprint of a survey\n", output_file)};
  if (sha256.starts_with(*found))
    return {true, fmt::format("{} was made from {} as it stands\n", output_file, survey_file)};
  constexpr std::size_t shown = 12;
  return {false,
          fmt::format("{} was not made from {} as it stands: it carries the fingerprint {}, "
                      "the survey has {}\n",
                      output_file, survey_file, found->substr(0, shown), sha256.substr(0, shown))};
}

}  // namespace tinworm::verbs
