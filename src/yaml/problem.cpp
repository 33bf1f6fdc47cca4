#include "yaml/problem.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "yaml/characters.hpp"

namespace tinworm::yaml {
namespace {

constexpr std::size_t found_at_most = 60;  // characters of `found` that are shown
constexpr std::size_t before_caret = 60;   // characters of the source line shown before the caret
constexpr std::size_t line_at_most = 100;  // and in all
constexpr std::string_view cut_mark = "…";

// The characters of `text` from `from` on, at most `count`; cuts are marked.
std::string window(const std::vector<std::string>& characters, std::size_t from,
                   std::size_t count) {
  std::string out = from > 0 ? std::string(cut_mark) : "";
  const std::size_t end = std::min(characters.size(), from + count);
  for (std::size_t i = from; i < end; ++i) out += characters[i];
  if (end < characters.size()) out += cut_mark;
  return out;
}

// Each character fit for a terminal; tabs kept.
std::vector<std::string> characters_of(std::string_view text) {
  std::vector<std::string> out;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t bytes = character_at(text, i).bytes;
    const std::string_view one = text.substr(i, bytes);
    out.push_back(one == "\t" ? "\t" : printable(one));
    i += bytes;
  }
  return out;
}

std::string headline(const Problem& problem, std::string_view file_name) {
  std::vector<std::string> notes;
  if (!problem.found.empty()) {
    const auto found = window(characters_of(printable(problem.found)), 0, found_at_most);
    notes.push_back(fmt::format("found \"{}\"", found));
  }
  if (!problem.allowed.empty()) notes.push_back("allowed: " + shown(problem.allowed));
  if (!problem.cure.empty()) notes.push_back(shown(problem.cure));
  std::string text = shown(file_name);
  if (problem.place.line > 0)
    text += fmt::format(":{}:{}", problem.place.line, problem.place.column);
  text += ": " + shown(problem.what);
  if (!notes.empty()) text += fmt::format(" ({})", fmt::join(notes, "; "));
  return text + "\n";
}

// The source line, cut to a window round the caret, and the caret beneath.
std::string picture(Place place, std::string_view source) {
  const auto characters = characters_of(line_text(source, place.line));
  if (characters.empty()) return "";
  const std::size_t caret = std::min<std::size_t>(std::max(place.column, 1) - 1, characters.size());
  const bool fits = characters.size() <= line_at_most;
  const std::size_t from = fits || caret <= before_caret ? 0 : caret - before_caret;
  std::string out = window(characters, from, line_at_most) + "\n";
  if (from > 0) out += ' ';
  for (std::size_t i = from; i < caret; ++i) out += characters[i] == "\t" ? '\t' : ' ';
  return out + "^\n";
}

bool same(const Problem& a, const Problem& b) {
  return a.place == b.place && a.what == b.what && a.found == b.found;
}

}  // namespace

std::string to_text(const Problems& problems, std::string_view file_name, std::string_view source,
                    int most) {
  Problems sorted = problems;
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const Problem& a, const Problem& b) { return a.place < b.place; });
  // What an alias repeats is wrong once.
  sorted.erase(std::unique(sorted.begin(), sorted.end(), same), sorted.end());
  const std::size_t shown = std::min<std::size_t>(sorted.size(), std::max(most, 0));
  std::string text;
  for (std::size_t i = 0; i < shown; ++i) {
    text += headline(sorted[i], file_name);
    if (sorted[i].place.line > 0) text += picture(sorted[i].place, source);
  }
  if (shown < sorted.size())
    text += fmt::format("and {} more: --all lists them\n", sorted.size() - shown);
  return text;
}

}  // namespace tinworm::yaml
