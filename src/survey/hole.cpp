#include "survey/hole.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "quantity/figure.hpp"
#include "survey/free_words.hpp"
#include "survey/value.hpp"
#include "survey/written.hpp"

namespace tinworm::survey {
namespace {

constexpr int most_holes = 200;

bool is_figure(std::string_view word) {
  return !word.empty() && ((word[0] >= '0' && word[0] <= '9') || word[0] == '.');
}

double area_mm2(const Size& size) {
  return size.along_mm * size.across_mm;
}

// The words without "holes", "up" and "to"; whether "to" was among them.
struct Counted {
  std::vector<std::string_view> words;
  bool to = false, named = false;
};

Counted counted(std::string_view text) {
  Counted counted;
  for (const std::string_view word : between_spaces(text)) {
    const std::string lower = lower_case(word);
    if (lower == "to")
      counted.to = true;
    else if (lower == "hole" || lower == "holes")
      counted.named = true;
    else if (lower != "up")
      counted.words.push_back(word);
  }
  return counted;
}

Holes several_to(Page& page, const yaml::Node& node, const Counted& counted) {
  const auto count = quantity::parse_whole_number(counted.words.front());
  const std::string_view from = counted.words[1];
  const auto offset = static_cast<std::size_t>(quantity::offset_in(node.text, from));
  const auto size = hole_mm(page, page.part_of(node, std::string_view(node.text).substr(offset)));
  if (!size) return {};
  if (!count || *count < 1 || *count > most_holes) {
    page.add({node.place, "holes are counted in figures", node.text,
              fmt::format("1 to {}", most_holes), "5 holes to 30: the largest is 30 mm across"});
    return {};
  }
  const Size half{size->along_mm / 2, size->across_mm / 2};
  return {size, std::vector<Size>(static_cast<std::size_t>(*count - 1), half)};
}

}  // namespace

bool is_count_of_holes(std::string_view part) {
  const Counted found = counted(part);
  return found.named && !found.words.empty() && is_figure(found.words.front()) &&
         is_figure(part.substr(0, part.find(' ')));
}

Holes read_holes(Page& page, const yaml::Node& node) {
  const auto text = unquoted(page, node, "a hole");
  if (!text) return {};
  const Counted found = counted(*text);
  if (found.to && found.words.size() >= 2) return several_to(page, node, found);
  if (found.named || found.to) {
    page.add({node.place, "several holes carry the size of the largest", node.text,
              "5 holes to 30, hole 20 15 8",
              "the word of one hole stands before its size: hole 20"});
    return {};
  }
  // One unit at the end holds for all; a size may have spaces round its x.
  std::vector<Size> sizes;
  const bool several = found.words.size() > 1 && !quantity::parse_hole(*text, page.units) &&
                       std::ranges::all_of(found.words,
                                           [](auto word) {
                                             return is_figure(word) || lower_case(word) == "mm" ||
                                                    lower_case(word) == "in";
                                           }) &&
                       std::ranges::count_if(found.words, is_figure) > 1;
  if (!several) {
    if (const auto size = hole_mm(page, node)) sizes.push_back(*size);
  } else {
    const std::string_view last = found.words.back();
    const std::string unit = is_figure(last) ? "" : fmt::format(" {}", last);
    for (const std::string_view word : found.words) {
      if (!is_figure(word)) continue;
      yaml::Node one = page.part_of(node, word);
      one.text += unit;
      if (const auto size = hole_mm(page, one)) sizes.push_back(*size);
    }
  }
  if (sizes.empty()) return {};
  std::ranges::stable_sort(sizes, std::greater<>(), area_mm2);
  return {sizes.front(), std::vector<Size>(sizes.begin() + 1, sizes.end())};
}

std::string holes_text(const Size& largest, const std::vector<Size>& others) {
  std::string text = size_text(largest);
  for (const Size& other : others) text += fmt::format(" {}", size_text(other));
  return text;
}

}  // namespace tinworm::survey
