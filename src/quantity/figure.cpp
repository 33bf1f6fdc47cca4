#include "quantity/figure.hpp"

#include <algorithm>
#include <charconv>
#include <string>

#include <fmt/format.h>

#include "quantity/ascii.hpp"

namespace tinworm::quantity {
namespace {

constexpr std::string_view plain_decimals = "plain decimals: 3, 0.82, .82";

// The longest front of `text` made of digits with at most one point.
std::string_view front_number(std::string_view text) {
  std::size_t end = 0;
  bool point = false;
  while (end < text.size() && (is_digit(text[end]) || (text[end] == '.' && !point))) {
    point = point || text[end] == '.';
    ++end;
  }
  return text.substr(0, end);
}

bool has_digit(std::string_view text) {
  return std::any_of(text.begin(), text.end(), is_digit);
}

std::string without_leading_zeros(std::string_view digits) {
  const std::size_t first = std::min(digits.find_first_not_of('0'), digits.size() - 1);
  return std::string(digits.substr(first));
}

Refusal comma(std::string_view before, std::string_view behind) {
  const bool thousands = before[0] != '0' && before.find('.') == std::string_view::npos &&
                         behind.size() == 3 && before.size() <= 3;
  return {"a number has a point, never a comma", std::string(plain_decimals),
          thousands
              ? fmt::format("write {0}.{1}, or {0}{1} if the comma parts thousands", before, behind)
              : fmt::format("write {}.{}", before, behind),
          0};
}

// What is wrong with a number that goes on in a way numbers do elsewhere; empty if nothing is.
Refusal continued(std::string_view number, std::string_view after) {
  const std::string decimals(plain_decimals);
  const bool digit_next = after.size() > 1 && is_digit(after[1]);
  if (after.empty()) return {};
  if (after[0] == ',' && digit_next) return comma(number, front_number(after.substr(1)));
  if ((after[0] == '_' || after[0] == '\'') && digit_next)
    return {"the digits of a number stand together", decimals, "leave out the separators", 0};
  if (after[0] == '.') return {"a number has one point at most", decimals, "", 0};
  const bool signed_next =
      after.size() > 2 && (after[1] == '+' || after[1] == '-') && is_digit(after[2]);
  if ((after[0] == 'e' || after[0] == 'E') && (digit_next || signed_next))
    return {"a number is written out, without an exponent", decimals, "", 0};
  return {};
}

}  // namespace

bool starts_number(std::string_view text) {
  return !text.empty() && (is_digit(text[0]) || text[0] == '.');
}

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return text.substr(text.size());
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

int offset_in(std::string_view whole, std::string_view part) {
  const auto bytes = whole.substr(0, static_cast<std::size_t>(part.data() - whole.data()));
  return static_cast<int>(std::count_if(bytes.begin(), bytes.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;  // not a continuation byte of UTF-8
  }));
}

tl::expected<Figure, Refusal> leading_figure(std::string_view text, std::string_view whole) {
  text = trimmed(text);
  const auto refuse = [&](Refusal refusal) {
    refusal.offset = offset_in(whole, text);
    return tl::make_unexpected(std::move(refusal));
  };
  const std::string decimals(plain_decimals);
  if (text.empty()) return refuse({"a number is missing", decimals, "", 0});
  if (text[0] == '-' || text[0] == '+')
    return refuse({"a number here has no sign", decimals, "", 0});
  const std::string_view number = front_number(text);
  if (!has_digit(number))
    return refuse({fmt::format("\"{}\" is not a number", text), decimals, "", 0});
  if (number.size() > 1 && number[0] == '0' && is_digit(number[1]))
    return refuse({"a number starts with 0 only before its point", decimals,
                   fmt::format("write {}", without_leading_zeros(number)), 0});
  const std::string_view after = text.substr(number.size());
  if (Refusal wrong = continued(number, after); !wrong.what.empty()) return refuse(wrong);

  // from_chars takes neither "5." nor ".5" on every library: give it digits on both sides.
  const std::string digits = fmt::format("{}{}{}", number.front() == '.' ? "0" : "", number,
                                         number.back() == '.' ? "0" : "");
  double value = 0;
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value,
                                    std::chars_format::fixed);
  if (read.ec != std::errc() || read.ptr != digits.data() + digits.size())
    return refuse({"a number of this size cannot be read", decimals, "", 0});
  return Figure{value, trimmed(after), false};
}

}  // namespace tinworm::quantity
