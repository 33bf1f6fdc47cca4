#include "survey/value.hpp"

#include <algorithm>
#include <array>
#include <functional>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "quantity/sheet.hpp"
#include "survey/free_words.hpp"

namespace tinworm::survey {
namespace {

using quantity::Refusal;
using yaml::Node;

template <class Value>
std::optional<Value> taken(Page& page, const Node& node,
                           const tl::expected<Value, Refusal>& value) {
  if (value) return *value;
  page.refuse(node, value.error());
  return std::nullopt;
}

std::string with_unit(double value, std::string_view unit) {
  return unit.empty() ? fmt::format("{}", value) : fmt::format("{} {}", value, unit);
}

std::string cure_outside(const Page& page, const Node& node, const Range& range) {
  if (!range.cure.empty()) return std::string(range.cure);
  const bool bare = node.text.find_first_not_of("0123456789. ") == std::string::npos;
  if (!bare || range.unit != "mm") return "";
  return page.units == quantity::Units::inch ? "a number without a unit is in inches in this survey"
                                             : "a number without a unit is in mm in this survey";
}

// Calls `line` for each line of readings: the node itself, or each of its list.
void each_line(Page& page, const Node& node, const Range& range,
               const std::function<void(const Node&)>& line) {
  if (node.kind != Node::Kind::sequence) {
    line(node);
  } else if (node.items.empty()) {
    page.add({node.place, fmt::format("a list for {} is empty", range.what), "", "",
              "give it readings or leave the key out"});
  } else {
    for (const Node& item : node.items) line(item);
  }
}

bool all_within(Page& page, const Node& node, const Range& range, const std::vector<double>& all) {
  for (const double value : all)
    if (!within(page, node, range, value)) return false;  // one problem a line is enough
  return true;
}

// A film's text. `>2000` can't begin a value in YAML but in quotes.
std::optional<std::string_view> film_text(Page& page, const Node& node) {
  if (node.quoted && node.text.starts_with('>')) return node.text;
  return unquoted(page, node, film_range.what);
}

// 0 is bare metal; next to it there is no coat, but a figure meant in mm.
bool thick_enough(Page& page, const Node& node, const std::vector<double>& films_um) {
  for (const double film_um : films_um) {
    if (film_um <= 0 || film_um >= thinnest_film_um) continue;
    page.add({node.place, fmt::format("no coat is {:g} um thin", film_um), node.text,
              "0 for bare metal, or 2 um and more",
              fmt::format("if it was read in mm, write {:g} mm", film_um)});
    return false;
  }
  return true;
}

// A gauge that went off its scale at 1000 can't have read 1500 beside it.
bool none_over_the_scale(Page& page, const Node& node, const quantity::Films& films) {
  if (!films.over_um) return true;
  const double greatest_um = *std::ranges::max_element(films.um);
  if (greatest_um <= *films.over_um) return true;
  page.add({node.place,
            fmt::format("a film of {:g} um was read, yet {:g} um was off the gauge's scale",
                        greatest_um, *films.over_um),
            node.text, "over with the greatest figure: 900 over 2000",
            "write what the gauge can read at most behind over"});
  return false;
}

template <class Parse>
std::optional<Size> size_within(Page& page, const Node& node, Parse parse) {
  const auto text = unquoted(page, node, "a size");
  if (!text) return std::nullopt;
  const auto size = taken(page, node, parse(*text, page.units));
  if (!size || !within(page, node, size_range, size->along_mm) ||
      !within(page, node, size_range, size->across_mm))
    return std::nullopt;
  return size;
}

std::string words_of(Page& page, const Node& node, std::string_view what,
                     std::size_t most_characters, std::string_view cure_of_blank) {
  const auto text = scalar(page, node, what);
  if (!text) return "";
  if (text->find_first_not_of(" \t\n") == std::string_view::npos)
    page.add({node.place, fmt::format("{} is blank", what), "", "", std::string(cure_of_blank)});
  if (characters(*text) > most_characters)
    page.add({node.place, fmt::format("{} is too long", what),
              fmt::format("{} characters", characters(*text)),
              fmt::format("{} characters", most_characters), "shorten it"});
  return std::string(*text);
}

}  // namespace

bool boolean_elsewhere(Page& page, const Node& node) {
  constexpr std::array booleans{"yes", "no", "on", "off", "true", "false", "y", "n"};
  if (node.kind != Node::Kind::scalar || node.quoted) return false;
  const std::string text = lower_case(node.text);
  if (std::find(booleans.begin(), booleans.end(), text) == booleans.end()) return false;
  page.add({node.place, "other YAML readers take this word as true or false", node.text, "",
            "write what is meant in another word, or quote it where words are free"});
  return true;
}

std::optional<std::string_view> scalar(Page& page, const Node& node, std::string_view what) {
  if (boolean_elsewhere(page, node)) return std::nullopt;
  const auto text = yaml::scalar(node, page.problems, what);
  if (node.kind != Node::Kind::scalar) return std::nullopt;
  return text;
}

std::optional<std::string_view> unquoted(Page& page, const Node& node, std::string_view what) {
  const auto text = scalar(page, node, what);
  if (text && node.quoted) {
    page.add({node.place, fmt::format("{} stands without quotes", what), node.text, "",
              "leave out the quotes"});
    return std::nullopt;
  }
  return text;
}

void unknown_word(Page& page, const Node& node, std::string_view what,
                  const std::vector<std::string>& allowed) {
  page.add({node.place, fmt::format("unknown word for {}", what), node.text,
            fmt::format("{}", fmt::join(allowed, ", ")), yaml::did_you_mean(node.text, allowed)});
}

std::vector<Node> parts_of(Page& page, const Node& node, std::string_view what) {
  if (node.kind == Node::Kind::sequence) {
    if (node.items.empty())
      page.add({node.place, fmt::format("a list for {} is empty", what), "", "",
                "fill it in, or leave the key out"});
    return node.items;
  }
  const auto text = scalar(page, node, what);
  std::vector<Node> parts;
  if (text)
    for (const std::string_view each : between_spaces(*text))
      parts.push_back(page.part_of(node, each));
  return parts;
}

std::string text_of(Page& page, const Node& node, std::string_view what) {
  return words_of(page, node, what, text_characters, "fill it in, or leave the key out");
}

std::string needed_text_of(Page& page, const Node& node, std::string_view what) {
  return words_of(page, node, what, text_characters, "fill it in");
}

std::string name_of(Page& page, const Node& node, std::string_view what) {
  const std::string name = words_of(page, node, what, name_characters, "fill it in");
  if (name.find('\n') != std::string::npos)
    page.add({node.place, fmt::format("{} stands on one line", what), name, "",
              "write it without a line break"});
  return name;
}

bool is_short(Page& page, const Node& line, std::string_view what) {
  if (characters(line.text) <= text_characters) return true;
  page.add({line.place, fmt::format("{} is too long for one line", what), "",
            fmt::format("{} characters", text_characters), "write it as a list"});
  return false;
}

std::optional<double> within(Page& page, const Node& node, const Range& range, double value) {
  if (value >= range.least && value <= range.most) return value;
  page.add({node.place, fmt::format("{} is out of range", range.what), node.text,
            fmt::format("{} to {}", range.least, with_unit(range.most, range.unit)),
            cure_outside(page, node, range)});
  return std::nullopt;
}

std::optional<double> length_mm(Page& page, const Node& node, const Range& range) {
  const auto text = unquoted(page, node, range.what);
  if (!text) return std::nullopt;
  const auto value = taken(page, node, quantity::parse_length_mm(*text, page.units));
  return value ? within(page, node, range, *value) : std::nullopt;
}

std::optional<double> coordinate_mm(Page& page, const Node& node) {
  const auto text = unquoted(page, node, position_range.what);
  if (!text) return std::nullopt;
  const auto value = taken(page, node, quantity::parse_coordinate_mm(*text, page.units));
  return value ? within(page, node, position_range, *value) : std::nullopt;
}

std::optional<double> sheet_mm(Page& page, const Node& node) {
  const auto text = unquoted(page, node, sheet_range.what);
  if (!text) return std::nullopt;
  const auto value = taken(page, node, quantity::parse_sheet_mm(*text, page.units));
  return value ? within(page, node, sheet_range, *value) : std::nullopt;
}

std::optional<Size> size_mm(Page& page, const Node& node) {
  return size_within(page, node, quantity::parse_size);
}

std::optional<Size> hole_mm(Page& page, const Node& node) {
  return size_within(page, node, quantity::parse_hole);
}

std::optional<double> share(Page& page, const Node& node) {
  const auto text = unquoted(page, node, "the share that was seen");
  if (!text) return std::nullopt;
  const auto value = taken(page, node, quantity::parse_share(*text));
  if (!value || (*value > 0 && *value < 1)) return value;
  page.add({node.place, "a zone seen in part is seen neither wholly nor not at all", node.text,
            "over 0 % and under 100 %",
            *value > 0 ? "name it under bare or coated" : "name it under hidden, with its reason"});
  return std::nullopt;
}

std::optional<double> distance_km(Page& page, const Node& node) {
  const auto text = unquoted(page, node, odometer_range.what);
  if (!text) return std::nullopt;
  const auto value = taken(page, node, quantity::parse_distance_km(*text));
  return value ? within(page, node, odometer_range, *value) : std::nullopt;
}

std::optional<int> year(Page& page, const Node& node, const Range& range) {
  return whole_number(page, node, range);
}

std::optional<int> whole_number(Page& page, const Node& node, const Range& range) {
  const auto text = unquoted(page, node, range.what);
  if (!text) return std::nullopt;
  const auto value = taken(page, node, quantity::parse_whole_number(*text));
  if (!value || !within(page, node, range, *value)) return std::nullopt;
  return value;
}

std::optional<PartialDate> date(Page& page, const Node& node, std::string_view what) {
  const auto text = unquoted(page, node, what);
  if (!text) return std::nullopt;
  return taken(page, node, quantity::parse_date(*text));
}

std::optional<PartialDate> past_date(Page& page, const Node& node, std::string_view what) {
  const auto day = date(page, node, what);
  if (!day) return day;
  if (page.visited && day->first() > page.visited->last())
    page.add({node.place, fmt::format("{} lies after the visit", what), node.text,
              fmt::format("up to {}", page.visited->text()),
              "one of the two dates is wrong: look at `visit` too"});
  if (page.built && day->year < *page.built)
    page.add({node.place, fmt::format("{} lies before the car was built", what), node.text,
              fmt::format("from {}", *page.built),
              "one of the two years is wrong: look at `built` too"});
  return day;
}

std::vector<double> readings_mm(Page& page, const Node& node, const Range& range) {
  std::vector<double> all;
  each_line(page, node, range, [&](const Node& line) {
    const auto text = unquoted(page, line, range.what);
    if (!text) return;
    const auto values = taken(page, line,
                              range.of_sheet ? quantity::parse_sheets_mm(*text, page.units)
                                             : quantity::parse_lengths_mm(*text, page.units));
    if (values && all_within(page, line, range, *values))
      all.insert(all.end(), values->begin(), values->end());
  });
  return all;
}

quantity::Films films_um(Page& page, const Node& node) {
  quantity::Films all;
  each_line(page, node, film_range, [&](const Node& line) {
    const auto text = film_text(page, line);
    if (!text) return;
    const auto films = taken(page, line, quantity::parse_films_um(*text));
    if (!films || !all_within(page, line, film_range, films->um)) return;
    all.um.insert(all.um.end(), films->um.begin(), films->um.end());
    if (films->over_um) all.over_um = std::max(all.over_um.value_or(0), *films->over_um);
  });
  if (!thick_enough(page, node, all.um) || !none_over_the_scale(page, node, all)) return {};
  return all;
}

}  // namespace tinworm::survey
