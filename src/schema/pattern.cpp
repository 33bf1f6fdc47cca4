#include "schema/pattern.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/fields.hpp"
#include "quantity/date.hpp"
#include "quantity/sheet.hpp"
#include "quantity/tyre.hpp"
#include "quantity/unit_words.hpp"
#include "survey/limits.hpp"
#include "survey/photo.hpp"

namespace tinworm::schema::pattern {
namespace {

std::string any_digits(std::size_t count) {
  return count == 0 ? "" : count == 1 ? "[0-9]" : fmt::format("[0-9]{{{}}}", count);
}

std::string run_of(std::size_t first, std::size_t last) {
  return first == last ? fmt::format("{}", first) : fmt::format("[{}-{}]", first, last);
}

// How `front` goes on, by `count` digits, to a text that is taken.
struct Ways {
  bool every = false;  // by any digits
  std::vector<std::string> patterns;
};

Ways ways_on(const std::string& front, std::size_t count, const IsTaken& is_taken) {
  if (count == 0) return {is_taken(front), {}};
  std::array<Ways, 10> after;
  for (std::size_t digit = 0; digit < 10; ++digit)
    after[digit] = ways_on(front + std::to_string(digit), count - 1, is_taken);
  const auto is_open = [](const Ways& ways) { return ways.every; };
  if (std::all_of(after.begin(), after.end(), is_open)) return {true, {any_digits(count)}};
  Ways ways;
  for (std::size_t digit = 0; digit < 10; ++digit) {
    const std::size_t first = digit;
    if (after[digit].every) {
      while (digit < 9 && after[digit + 1].every) ++digit;
      ways.patterns.push_back(run_of(first, digit) + any_digits(count - 1));
    }
    if (after[first].every) continue;
    for (const std::string& way : after[digit].patterns)
      ways.patterns.push_back(std::to_string(digit) + way);
  }
  return ways;
}

std::string jpeg_ending() {
  return one_of({survey::jpeg_endings.begin(), survey::jpeg_endings.end()});
}

std::string with_optional(const std::string& what, const std::vector<std::string_view>& units) {
  return what + "(?: *" + one_of(units) + ")?";
}

std::string gauges(quantity::GaugeScale scale) {
  return digits(2, [&](const std::string& text) {
    return quantity::sheet_gauge_mm(std::stoi(text), scale).has_value();
  });
}

// A path that can't lead out of the survey's folder, without the signs `but`.
std::string path_inside(const std::string& but) {
  return fmt::format("(?![/~])(?!(?:[^/{0}]*/)*\\.\\.(?:/|$))[^:\\\\{0}]*", but);
}

// A number, or the path of a JPEG file.
std::string number_or_path(const std::string& but) {
  return fmt::format("[0-9]{{1,{}}}|{}{}", survey::photo_digits, path_inside(but), jpeg_ending());
}

}  // namespace

std::string whole(const std::string& inside) {
  return "^ *(?:" + inside + ") *$";
}

std::string one_of(const std::vector<std::string_view>& texts) {
  std::string all;
  for (const std::string_view text : texts) {
    if (!all.empty()) all += '|';
    for (const char c : text) {
      if (std::string_view("\\^$.|?*+()[]{}/").find(c) != std::string_view::npos) all += '\\';
      all += c;
    }
  }
  return "(?:" + all + ")";
}

std::string digits(std::size_t count, const IsTaken& is_taken) {
  return fmt::format("{}", fmt::join(ways_on("", count, is_taken).patterns, "|"));
}

std::string number() {
  return "(?:(?:0|[1-9][0-9]*)(?:\\.[0-9]*)?|\\.[0-9]+)";
}

std::string length() {
  return with_optional(number(), quantity::length_unit_words());
}

std::string lengths() {
  return with_optional(number() + "(?: +" + number() + ")*", quantity::length_unit_words());
}

std::string coordinate() {
  return "[-+]?" + length();
}

std::string size() {
  return with_optional(number() + "(?: *[x×] *" + number() + ")?", quantity::length_unit_words());
}

std::string holes() {
  const std::string side = number() + "(?: *[x×X] *" + number() + ")?";
  return with_optional("(?:[0-9]+(?: +[Hh]oles?)?(?: +up)? +to +)?" + side + "(?: +" + side + ")*",
                       quantity::length_unit_words());
}

std::string sheet() {
  return fmt::format("{}|(?:{}) *SWG|(?:{}) *US", length(), gauges(quantity::GaugeScale::swg),
                     gauges(quantity::GaugeScale::us));
}

std::string area() {
  return number() + " *" + one_of(quantity::area_unit_words());
}

std::string distance() {
  return number() + " *" + one_of(quantity::distance_unit_words());
}

std::string share() {
  return number() + " *%";
}

std::string price() {
  return number() + " *[A-Z]{3}";
}

std::string date() {
  const auto is_date = [](const std::string& text) {
    return quantity::parse_date(text).has_value();
  };
  const std::string year = digits(4, is_date);
  const std::string month =
      digits(2, [&](const std::string& text) { return is_date("2000-" + text); });
  const std::string day =
      digits(2, [&](const std::string& text) { return is_date("2000-01-" + text); });
  return fmt::format("(?:{})(?:-(?:{})(?:-(?:{}))?)?", year, month, day);
}

std::string tyre_code() {
  const std::string week = digits(2, [](const std::string& text) {
    return quantity::parse_tyre_code(text + "01").has_value();
  });
  return fmt::format("(?:{})[0-9]{{1,2}}", week);
}

std::string zone_number() {
  return "(?:" +
         digits(2, [](const std::string& text) { return body::zone_number(text).has_value(); }) +
         ")";
}

std::string zones() {
  const std::string range = zone_number() + "(?:-" + zone_number() + ")?";
  return range + "(?: +" + range + ")*";
}

std::string zone_name() {
  return "(?!own)[A-Za-z][^0-9]*";
}

std::string position() {
  const std::string axis = "[xyz] +" + coordinate();
  return axis + "(?: +" + axis + ")*";
}

std::string photo() {
  return number_or_path("");
}

std::string photos() {
  const std::string one = "(?:" + number_or_path(" ") + ")";
  return one + "(?: +" + one + ")*";
}

std::string photo_folder() {
  return path_inside("\\n");
}

std::string photo_name() {
  return "(?!.*\\{\\}.*\\{\\})" + path_inside("\\n") + "\\{\\}[^:\\\\\\n]*" + jpeg_ending();
}

}  // namespace tinworm::schema::pattern
