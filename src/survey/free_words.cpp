#include "survey/free_words.hpp"

#include <algorithm>

#include "yaml/problem.hpp"

namespace tinworm::survey {
namespace {

using quantity::is_digit;

// Bytes over ASCII belong to letters of other languages.
bool is_of_word(char c) {
  const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  return letter || is_digit(c) || static_cast<unsigned char>(c) >= 0x80;
}

// The words of a name that tell places apart, one that is slipped in ("bottem") as it is meant.
std::vector<std::string> telling_words(const std::string& name) {
  static const std::vector<std::string> directions = {"left",  "right", "front",  "rear",  "upper",
                                                      "lower", "top",   "bottom", "inner", "outer"};
  std::vector<std::string> telling;
  for (const std::string& word : words_in(name)) {
    const bool known = std::ranges::find(directions, word) != directions.end();
    const std::string meant = known ? word : yaml::nearest_word(word, directions);
    if (std::ranges::any_of(word, is_digit))
      telling.push_back(word);
    else if (!meant.empty())
      telling.push_back(meant);
  }
  std::ranges::sort(telling);
  return telling;
}

// Whether two names mean two places: each has a word that tells places apart, and not the same.
bool mean_two_places(const std::string& a, const std::string& b) {
  const std::vector<std::string> of_a = telling_words(a), of_b = telling_words(b);
  return !of_a.empty() && !of_b.empty() && of_a != of_b;
}

std::vector<std::string> sorted_words(const std::string& name) {
  std::vector<std::string> words = words_in(name);
  std::ranges::sort(words);
  return words;
}

}  // namespace

std::vector<std::string> words_in(std::string_view text) {
  std::vector<std::string> words;
  bool inside = false;
  for (const char c : text) {
    if (is_of_word(c)) {
      if (!inside) words.emplace_back();
      words.back() += lower_case(c);
    }
    inside = is_of_word(c);
  }
  return words;
}

std::string meant_name(const std::string& name, const std::vector<std::string>& names) {
  if (std::ranges::find(names, name) != names.end()) return "";
  for (const std::string& each : names)  // "end, rear" for "rear end"
    if (sorted_words(each) == sorted_words(name)) return each;
  std::vector<std::string> candidates = names;
  std::erase_if(candidates, [&](const std::string& each) { return mean_two_places(name, each); });
  return yaml::nearest_word(name, candidates);
}

}  // namespace tinworm::survey
