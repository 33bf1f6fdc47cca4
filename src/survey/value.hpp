// One value of a survey from its node: words, quantities within their limits, dates, free text.
// Each adds a problem to the page and returns nothing where the node isn't what it should be.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "survey/limits.hpp"
#include "survey/page.hpp"

namespace tinworm::survey {

// A plain scalar that other YAML readers turn into true or false: yes, No, on, off, true, n …
// Adds the problem and is true.
bool boolean_elsewhere(Page& page, const yaml::Node& node);

// Scalar text for a word, a number or a date. Nothing for lists, maps and booleans elsewhere.
std::optional<std::string_view> scalar(Page& page, const yaml::Node& node, std::string_view what);

// The same for numbers and dates, which stand without quotes.
std::optional<std::string_view> unquoted(Page& page, const yaml::Node& node, std::string_view what);

void unknown_word(Page& page, const yaml::Node& node, std::string_view what,
                  const std::vector<std::string>& allowed);

// The items of a list, or what stands between spaces in a line; a problem where there are none.
std::vector<yaml::Node> parts_of(Page& page, const yaml::Node& node, std::string_view what);

template <class Word>
std::optional<Word> word_of(Page& page, const yaml::Node& node, std::string_view what) {
  const auto text = scalar(page, node, what);
  if (!text) return std::nullopt;
  const auto value = of<Word>(*text);
  if (!value) unknown_word(page, node, what, words<Word>());
  return value;
}

// Words between spaces or in a list, each once.
template <class Word>
std::vector<Word> words_of_list(Page& page, const yaml::Node& node, std::string_view what) {
  std::vector<Word> all;
  for (const yaml::Node& one : parts_of(page, node, what)) {
    const auto value = word_of<Word>(page, one, what);
    if (!value) continue;
    if (std::find(all.begin(), all.end(), *value) != all.end())
      page.add({one.place, fmt::format("\"{}\" stands twice", word(*value)), "", "", "keep one"});
    else
      all.push_back(*value);
  }
  return all;
}

// Free words, with a limit on their length; `what` as "a note".
std::string text_of(Page& page, const yaml::Node& node, std::string_view what);
// The same where the key can't be left out.
std::string needed_text_of(Page& page, const yaml::Node& node, std::string_view what);
std::string name_of(Page& page, const yaml::Node& node, std::string_view what);  // one line, short

// Whether a line of parts is short enough to be one; a problem if not. Keeps reading it quick too.
bool is_short(Page& page, const yaml::Node& line, std::string_view what);

// `value` if it lies in the range.
std::optional<double> within(Page& page, const yaml::Node& node, const Range& range, double value);

std::optional<double> length_mm(Page& page, const yaml::Node& node, const Range& range);
std::optional<double> coordinate_mm(Page& page, const yaml::Node& node);
std::optional<double> sheet_mm(Page& page, const yaml::Node& node);
std::optional<Size> size_mm(Page& page, const yaml::Node& node);
std::optional<Size> hole_mm(Page& page, const yaml::Node& node);  // one figure: as wide as long
std::optional<double> share(Page& page, const yaml::Node& node);  // over 0 and under 1
std::optional<double> distance_km(Page& page, const yaml::Node& node);
std::optional<int> whole_number(Page& page, const yaml::Node& node, const Range& range);
std::optional<int> year(Page& page, const yaml::Node& node, const Range& range);
std::optional<PartialDate> date(Page& page, const yaml::Node& node, std::string_view what);

// A date that can't lie after the visit, nor before the car was built: repairs, wax.
std::optional<PartialDate> past_date(Page& page, const yaml::Node& node, std::string_view what);

// Several readings, as a list or as one line of numbers.
std::vector<double> readings_mm(Page& page, const yaml::Node& node, const Range& range);
quantity::Films films_um(Page& page, const yaml::Node& node);

}  // namespace tinworm::survey
