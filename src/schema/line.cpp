#include "schema/line.hpp"

#include <fmt/format.h>

#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

std::string alternatives(const std::vector<std::string>& patterns) {
  return fmt::format("(?:{})", fmt::join(patterns, "|"));
}

std::string value_of(const Part& part) {
  return part.words.empty() ? "(?:" + part.figures + ")"
                            : pattern::one_of({part.words.begin(), part.words.end()});
}

std::string known_part(const Part& part) {
  return part.alone == Alone::yes ? fmt::format("(?:{} +)?{}", part.name, value_of(part))
                                  : fmt::format("{} +{}", part.name, value_of(part));
}

// Where free words would be taken for a part: a number, or the name or word of one.
std::string no_free_words(const Line& line) {
  std::vector<std::string> first = {"pits"}, whole;
  for (const Part& part : line.parts) {
    first.push_back(part.name == "at" ? "at(?= *$| +[-+.0-9]| +[xyz](?: |$))" : part.name);
    if (part.alone == Alone::yes)
      first.insert(first.end(), part.words.begin(), part.words.end());
    else
      whole.insert(whole.end(), part.words.begin(), part.words.end());
  }
  std::string pattern = fmt::format("[-+]?\\.?[0-9]|{}(?: |$)", alternatives(first));
  if (!whole.empty()) pattern += fmt::format("|{} *$", alternatives(whole));
  return pattern;
}

}  // namespace

std::string on_one_line(const Line& line) {
  constexpr std::string_view comma = " *, *";
  std::vector<std::string> parts, counting;
  for (const Part& part : line.parts) {
    parts.push_back(known_part(part));
    if (part.counts == Counts::yes) counting.push_back(known_part(part));
  }
  const std::string known = alternatives(parts);
  const std::string free_words = fmt::format("(?!{})[^, ][^,]*", no_free_words(line));
  return fmt::format("(?!.*[0-9],[0-9])(?=(?:[^,]*,)* *{0} *(?:,|$)){1}(?:{2}{1})*(?:{2}{3})?",
                     alternatives(counting), known, comma, free_words);
}

}  // namespace tinworm::schema
