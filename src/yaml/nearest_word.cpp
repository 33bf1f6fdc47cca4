#include <algorithm>
#include <limits>

#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::yaml {
namespace {

std::u32string lower_case(std::string_view word) {
  std::u32string letters;
  for (std::size_t i = 0; i < word.size();) {
    const Character character = character_at(word, i);
    const bool capital = character.code >= 'A' && character.code <= 'Z';
    letters += capital ? character.code + ('a' - 'A') : character.code;
    i += character.bytes;
  }
  return letters;
}

// Insertions, deletions, exchanges of a letter and swaps of neighbours, no letter edited twice
// (optimal string alignment, the restricted Damerau-Levenshtein distance).
std::size_t distance(const std::u32string& a, const std::u32string& b) {
  std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t exchange = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({exchange, last[j] + 1, row[j - 1] + 1});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before[j - 2] + 1);
    }
    std::swap(before, last);
    std::swap(last, row);
  }
  return last[b.size()];
}

}  // namespace

std::string nearest_word(std::string_view word, const std::vector<std::string>& allowed) {
  constexpr std::size_t longest_sought = 64;  // no word of ours is longer; keeps the search short
  const std::u32string sought = lower_case(word);
  if (sought.size() > longest_sought) return "";
  std::string nearest;
  std::size_t least = std::numeric_limits<std::size_t>::max();
  for (const std::string& candidate : allowed) {
    const std::u32string letters = lower_case(candidate);
    const std::size_t edits = distance(sought, letters);
    const bool near = edits <= 3 && edits * 3 <= std::max(sought.size(), letters.size());
    if (near && edits < least) {
      nearest = candidate;
      least = edits;
    }
  }
  return nearest;
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& allowed) {
  const std::string nearest = nearest_word(word, allowed);
  return nearest.empty() ? "" : "did you mean \"" + nearest + "\"?";
}

}  // namespace tinworm::yaml
