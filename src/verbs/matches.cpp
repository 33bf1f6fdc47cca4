#include "verbs/matches.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace tinworm::verbs {
namespace {

constexpr std::size_t whole = 64, shown = 12;

bool is_hex(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
}

// The run of hexadecimal digits that begins at `at`.
std::string_view digits_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_hex(text[end])) ++end;
  return text.substr(at, end - at);
}

void add(std::vector<std::string>& found, std::string_view digits) {
  if (std::ranges::find(found, digits) == found.end()) found.emplace_back(digits);
}

// After every `words` a fingerprint, or several with a space between.
std::vector<std::string> whole_after(std::string_view words, std::string_view output) {
  std::vector<std::string> found;
  for (std::size_t at = output.find(words); at != std::string_view::npos;
       at = output.find(words, at + 1)) {
    std::size_t next = at + words.size();
    for (std::string_view digits = digits_at(output, next); digits.size() == whole;
         digits = digits_at(output, next)) {
      add(found, digits);
      next += whole;
      if (next >= output.size() || output[next] != ' ') break;
      ++next;
    }
  }
  return found;
}

// "fingerprint 8e0d218274f5", as the text of one survey says.
std::vector<std::string> in_sentence(std::string_view output) {
  constexpr std::string_view words = "fingerprint ";
  for (std::size_t at = output.find(words); at != std::string_view::npos;
       at = output.find(words, at + 1)) {
    const std::string_view digits = digits_at(output, at + words.size());
    if (digits.size() == shown) return {std::string(digits)};
  }
  return {};
}

// The last column of the table that the text of a comparison has.
std::vector<std::string> in_table(std::string_view output) {
  constexpr std::string_view title = " fingerprint\n";
  std::vector<std::string> found;
  std::size_t at = output.find(title);
  if (at == std::string_view::npos) return found;
  for (at += title.size(); at < output.size() && output[at] != '\n';) {
    const std::size_t end = std::min(output.find('\n', at), output.size());
    const std::string_view line = output.substr(at, end - at);
    const std::string_view last = line.substr(line.rfind(' ') + 1);
    if (last.size() == shown && std::ranges::all_of(last, is_hex)) add(found, last);
    at = end + 1;
  }
  return found;
}

}  // namespace

std::vector<std::string> fingerprints_in(std::string_view output) {
  // As JSON and the metadata of pictures write it; PNG has five NULs there (an iTXt chunk).
  constexpr std::array<std::string_view, 5> before = {"\"sha256\": \"", "\"sha256\":\"",
                                                      "SHA-256: ", "SHA-256 ",
                                                      std::string_view("SHA-256\0\0\0\0\0", 12)};
  for (const std::string_view words : before)
    if (std::vector<std::string> found = whole_after(words, output); !found.empty()) return found;
  std::vector<std::string> found = in_sentence(output);
  return found.empty() ? in_table(output) : found;
}

Match match(std::string_view output, const std::string& output_file, const std::string& sha256,
            const std::string& survey_file) {
  std::vector<std::string> found = fingerprints_in(output);
  if (found.empty())
    return {false, fmt::format("{} holds no fingerprint of a survey\n", output_file)};
  const bool same =
      std::ranges::any_of(found, [&](const auto& each) { return sha256.starts_with(each); });
  const std::size_t surveys = found.size();
  if (same && surveys == 1)
    return {true, fmt::format("{} was made from {} as it stands\n", output_file, survey_file)};
  if (same)
    return {true, fmt::format("{} was made from {} surveys, {} as it stands among them\n",
                              output_file, surveys, survey_file)};
  for (std::string& each : found) each.resize(shown);
  const std::string carried = surveys == 1 ? "the fingerprint " + found.front()
                                           : fmt::format("the fingerprints of {} surveys, {}",
                                                         surveys, fmt::join(found, " "));
  return {false,
          fmt::format("{} was not made from {} as it stands: it carries {}, the survey has {}\n",
                      output_file, survey_file, carried, sha256.substr(0, shown))};
}

}  // namespace tinworm::verbs
