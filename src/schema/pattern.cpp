#include "schema/pattern.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/fields.hpp"
#include "quantity/date.hpp"
#include "quantity/fraction.hpp"
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

// Each as it stands or in capitals.
std::string in_any_case(const std::vector<std::string_view>& texts) {
  std::string all;
  for (const std::string_view text : texts) {
    if (!all.empty()) all += '|';
    for (const char c : text) {
      const bool letter = c >= 'a' && c <= 'z';
      all += letter ? fmt::format("[{}{}]", c, static_cast<char>(c - 'a' + 'A')) : std::string{c};
    }
  }
  return "(?:" + all + ")";
}

std::string units() {
  return in_any_case(quantity::length_unit_words());
}

// `3/64`, `4 1/2`, `4-1/2`.
std::string fraction() {
  return fmt::format("(?:(?:0|[1-9][0-9]*)(?: +| *- *))?[1-9][0-9]*/(?:{})",
                     fmt::join(quantity::fraction_parts, "|"));
}

std::string figure() {
  return fmt::format("(?:{}|{})", fraction(), number());
}

std::string with_optional_unit(const std::string& what) {
  return what + "(?: *" + units() + ")?";
}

std::string figures_between_spaces() {
  return figure() + "(?: +" + figure() + ")*";
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

// A number, a range of them, or the path of a JPEG file.
std::string number_or_path(const std::string& but) {
  return fmt::format("[0-9]{{1,{0}}}(?:-[0-9]{{1,{0}}})?|{1}{2}", survey::photo_digits,
                     path_inside(but), jpeg_ending());
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
  return with_optional_unit(figure());
}

std::string lengths() {
  return with_optional_unit(figures_between_spaces());
}

std::string sheets() {
  const std::string swg = gauges(quantity::GaugeScale::swg), us = gauges(quantity::GaugeScale::us);
  return fmt::format("{0}|(?:{1})(?: +(?:{1}))* *[Ss][Ww][Gg]|(?:{2})(?: +(?:{2}))* *[Uu][Ss]",
                     lengths(), swg, us);
}

std::string films() {
  const std::string one =
      fmt::format("(?:{0}(?: *[-–] *{0})?(?: *\\+)?|(?:>|[Oo][Vv][Ee][Rr]) *{0})", figure());
  return with_optional_unit(one + "(?: +" + one + ")*");
}

std::string coordinate() {
  return "[-+]?" + length();
}

std::string size() {
  return with_optional_unit(fmt::format("{0}(?:(?: *{1})? *[xX×*] *{0})?", figure(), units()));
}

std::string holes() {
  const std::string side = fmt::format("{0}(?: *[x×X*] *{0})?", figure());
  return fmt::format("(?:{}|{})", size(),
                     with_optional_unit("(?:[0-9]+(?: +[Hh]oles?)?(?: +up)? +to +)?" + side +
                                        "(?: +" + side + ")*"));
}

std::string sheet() {
  return fmt::format("{}|(?:{}) *[Ss][Ww][Gg]|(?:{}) *[Uu][Ss]", length(),
                     gauges(quantity::GaugeScale::swg), gauges(quantity::GaugeScale::us));
}

std::string area() {
  return number() + " *" + in_any_case(quantity::area_unit_words());
}

std::string distance() {
  return number() + " *" + in_any_case(quantity::distance_unit_words());
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
  return one + "(?:(?: +|, *)" + one + ")*";
}

std::string photo_folder() {
  return path_inside("\\n");
}

std::string photo_name() {
  const std::string blank = "\\{(?::0[1-9])?\\}";
  return fmt::format("(?!.*{0}.*{0})", blank) + path_inside("\\n") + blank + "[^:\\\\\\n]*" +
         jpeg_ending();
}

}  // namespace tinworm::schema::pattern
