#include "quantity/fraction.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string>

#include <fmt/format.h>

#include "quantity/unit.hpp"

namespace tinworm::quantity {
namespace {

constexpr std::string_view fractions = "3/64 in, 4 1/2 in, 3/4\"";

std::string_view front_digits(std::string_view text) {
  return text.substr(0, text.find_first_not_of("0123456789"));
}

struct Parts {
  std::string_view above, below;  // the line
};

std::optional<Parts> parts_of(std::string_view text) {
  const std::string_view above = front_digits(text);
  if (above.empty() || text.substr(above.size(), 1) != "/") return std::nullopt;
  const std::string_view below = front_digits(text.substr(above.size() + 1));
  if (below.empty()) return std::nullopt;
  return Parts{above, below};
}

std::optional<int> short_number(std::string_view digits) {
  int value = 0;
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  return read.ec == std::errc() ? std::optional(value) : std::nullopt;
}

// The same length with a fraction between 0 and 1; empty if it is whole inches.
std::string proper(int above, int below) {
  const int left = above % below;
  if (left == 0) return "";
  const std::string fraction = fmt::format("{}/{}", left, below);
  return above < below ? "write " + fraction : fmt::format("write {} {}", above / below, fraction);
}

// A fraction alone: over 0 and under 1.
tl::expected<Figure, Refusal> read_fraction(const Parts& parts, std::string_view text,
                                            std::string_view whole) {
  const auto refuse = [&](std::string what, std::string cure) {
    return refused({std::move(what), std::string(fractions), std::move(cure), 0}, whole, text);
  };
  const auto above = short_number(parts.above), below = short_number(parts.below);
  const bool known = below && std::ranges::count(fraction_parts, *below) > 0;
  if (!above || !below || !known)
    return refuse("a fraction of an inch has 2, 4, 8, 16, 32, 64 or 128 parts",
                  above && below && *below > 0
                      ? fmt::format("if it is meant, write it in decimals: {:.4g} in",
                                    static_cast<double>(*above) / *below)
                      : "");
  if (parts.above.front() == '0' || *above >= *below)
    return refuse("a fraction lies between 0 and 1", proper(*above, *below));
  const std::size_t length = parts.above.size() + 1 + parts.below.size();
  return Figure{static_cast<double>(*above) / *below, trimmed(text.substr(length)), true};
}

}  // namespace

tl::expected<Figure, Refusal> leading_fraction(std::string_view text, std::string_view whole) {
  text = trimmed(text);
  if (const auto parts = parts_of(text)) return read_fraction(*parts, text, whole);
  auto figure = leading_figure(text, whole);
  const std::string_view digits = front_digits(text);
  if (!figure || digits.empty()) return figure;
  // Inches and a fraction of one: the number before it is whole.
  std::string_view after = text.substr(digits.size());
  if (after.empty() || (after[0] != ' ' && after[0] != '\t' && after[0] != '-')) return figure;
  after = trimmed(after[0] == '-' ? after.substr(1) : after);
  const auto parts = parts_of(after);
  if (!parts) return figure;
  const auto fraction = read_fraction(*parts, after, whole);
  if (!fraction) return fraction;
  return Figure{figure->value + fraction->value, fraction->rest, true};
}

tl::expected<Figure, Refusal> leading_signed_fraction(std::string_view text,
                                                      std::string_view whole) {
  text = trimmed(text);
  if (text.empty() || (text[0] != '-' && text[0] != '+')) return leading_fraction(text, whole);
  if (text.size() < 2 || text[1] == ' ')
    return refused({"a sign stands right before its number", "-720, 1150, 12.5", "", 0}, whole,
                   text);
  auto figure = leading_fraction(text.substr(1), whole);
  if (figure && text[0] == '-') figure->value = -figure->value;
  return figure;
}

tl::expected<void, Refusal> fraction_of_an_inch(const Figure& figure, std::string_view written,
                                                std::string_view unit, bool bare_is_inch,
                                                std::string_view whole) {
  if (!figure.is_fraction || is_inch(unit) || (unit.empty() && bare_is_inch)) return {};
  const std::string text(trimmed(written));
  return refused({"a fraction is of an inch", std::string(fractions),
                  unit.empty() ? fmt::format("write {} in, or decimals", text)
                               : fmt::format("write decimals: {:g} {}", figure.value, unit),
                  0},
                 whole, trimmed(written));
}

}  // namespace tinworm::quantity
