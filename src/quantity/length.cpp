#include "quantity/length.hpp"

#include <array>
#include <cmath>
#include <optional>
#include <span>

#include <fmt/format.h>

#include "quantity/figure.hpp"
#include "quantity/unit_words.hpp"

namespace tinworm::quantity {
namespace {

struct Unit {
  std::string_view word;
  double factor;
};

// What people write and what it means here.
struct Slip {
  std::string_view written;
  std::string_view meant;
};

// inch, foot, mile: the international ones of 1959, exact.
constexpr double inch_mm = 25.4;
constexpr std::array lengths{Unit{"mm", 1},       Unit{"um", 0.001},    Unit{"µm", 0.001},
                             Unit{"μm", 0.001},   Unit{"cm", 10},       Unit{"m", 1000},
                             Unit{"in", inch_mm}, Unit{"thou", 0.0254}, Unit{"ft", 12 * inch_mm}};
constexpr std::array films{Unit{"um", 1},     Unit{"µm", 1},      Unit{"μm", 1},
                           Unit{"mm", 1000},  Unit{"cm", 1e4},    Unit{"m", 1e6},
                           Unit{"in", 25400}, Unit{"thou", 25.4}, Unit{"ft", 304800}};
constexpr std::array areas{Unit{"m2", 1}, Unit{"cm2", 0.0001}, Unit{"ft2", 0.09290304}};
constexpr std::array distances{Unit{"km", 1}, Unit{"mi", 1.609344}};

constexpr std::array slips{
    Slip{"MM", "mm"},        Slip{"Mm", "mm"},      Slip{"millimetres", "mm"}, Slip{"inch", "in"},
    Slip{"inches", "in"},    Slip{"IN", "in"},      Slip{"\"", "in"},          Slip{"mil", "thou"},
    Slip{"mils", "thou"},    Slip{"thous", "thou"}, Slip{"'", "ft"},           Slip{"feet", "ft"},
    Slip{"foot", "ft"},      Slip{"micron", "um"},  Slip{"microns", "um"},     Slip{"u", "um"},
    Slip{"µ", "um"},         Slip{"m²", "m2"},      Slip{"cm²", "cm2"},        Slip{"ft²", "ft2"},
    Slip{"sqft", "ft2"},     Slip{"miles", "mi"},   Slip{"mile", "mi"},        Slip{"KM", "km"},
    Slip{"kilometres", "km"}};

// A kind of quantity: its units, and how messages speak of it.
struct Kind {
  std::string_view name;     // "a length"
  std::string_view unit_of;  // "of length"
  std::span<const Unit> units;
  std::string_view allowed;
};

constexpr std::string_view length_units = "mm, um, cm, m, in, thou, ft";
constexpr Kind length{"a length", "of length", lengths, length_units};
constexpr Kind film{"a coating", "of length", films, length_units};
constexpr Kind area{"an area", "of area", areas, "m2, cm2, ft2"};
constexpr Kind distance{"a distance", "of distance", distances, "km, mi"};

std::vector<std::string_view> words_of(const Kind& kind) {
  std::vector<std::string_view> words;
  for (const Unit& unit : kind.units) words.push_back(unit.word);
  return words;
}

std::optional<double> factor_of(std::string_view word, const Kind& kind) {
  for (const Unit& unit : kind.units)
    if (unit.word == word) return unit.factor;
  return std::nullopt;
}

std::string meant(std::string_view word, const Kind& kind) {
  for (const Slip& slip : slips)
    if (slip.written == word && factor_of(slip.meant, kind))
      return fmt::format("did you mean \"{}\"?", slip.meant);
  return "";
}

tl::unexpected<Refusal> refuse(Refusal refusal, std::string_view whole, std::string_view at) {
  refusal.offset = offset_in(whole, at);
  return tl::make_unexpected(std::move(refusal));
}

bool starts_number(std::string_view text) {
  return !text.empty() && ((text[0] >= '0' && text[0] <= '9') || text[0] == '.');
}

tl::expected<double, Refusal> factor(std::string_view unit, std::string_view whole,
                                     const Kind& kind) {
  if (const auto known = factor_of(unit, kind)) return *known;
  const std::string allowed(kind.allowed);
  if (starts_number(unit))
    return refuse({"two numbers where one is meant", "", "", 0}, whole, unit);
  return refuse(
      {fmt::format("\"{}\" is no unit {}", unit, kind.unit_of), allowed, meant(unit, kind), 0},
      whole, unit);
}

double bare_factor_mm(Units units) {
  return units == Units::inch ? inch_mm : 1;
}

tl::expected<double, Refusal> measured(const tl::expected<Figure, Refusal>& figure,
                                       std::string_view whole, const Kind& kind,
                                       double bare_factor) {
  if (!figure) return tl::make_unexpected(figure.error());
  if (figure->rest.empty()) return figure->value * bare_factor;
  const auto by = factor(figure->rest, whole, kind);
  if (!by) return tl::make_unexpected(by.error());
  return figure->value * *by;
}

tl::expected<double, Refusal> with_required_unit(std::string_view text, const Kind& kind,
                                                 std::string_view example) {
  const auto figure = leading_figure(text, text);
  if (figure && figure->rest.empty())
    return refuse({fmt::format("{} needs its unit", kind.name), std::string(kind.allowed),
                   fmt::format("write it as {}", example), 0},
                  text, trimmed(text));
  return measured(figure, text, kind, 1);
}

// Numbers between spaces; the unit that ends the line, or none, is left in `unit`.
tl::expected<std::vector<double>, Refusal> numbers(std::string_view text, std::string_view& unit) {
  std::vector<double> values;
  std::string_view rest = trimmed(text);
  do {
    const auto figure = leading_figure(rest, text);
    if (!figure) return tl::make_unexpected(figure.error());
    values.push_back(figure->value);
    rest = figure->rest;
  } while (starts_number(rest));
  unit = rest;
  return values;
}

tl::expected<std::vector<double>, Refusal> measured_all(std::string_view text, const Kind& kind,
                                                        double bare_factor) {
  std::string_view unit;
  auto values = numbers(text, unit);
  if (!values) return values;
  if (!unit.empty() && unit[0] == ',')
    return refuse({"spaces stand between numbers, not commas", ".81 .78 .84 mm", "", 0}, text,
                  unit);
  const std::string_view first = unit.substr(0, unit.find_first_of(" \t0123456789."));
  if (first.size() < unit.size() && factor_of(first, kind))
    return refuse({"one unit for all numbers stands at the end", ".81 .78 .84 mm", "", 0}, text,
                  unit);
  double by = bare_factor;
  if (!unit.empty()) {
    const auto known = factor(unit, text, kind);
    if (!known) return tl::make_unexpected(known.error());
    by = *known;
  }
  for (double& value : *values) value *= by;
  return values;
}

// The length of the sign for "by" at the front: x or ×; 0 if it is neither.
std::size_t by_sign(std::string_view text) {
  if (text.substr(0, 1) == "x") return 1;
  return text.substr(0, 2) == "×" ? 2 : 0;
}

}  // namespace

std::vector<std::string_view> length_unit_words() {
  return words_of(length);
}
std::vector<std::string_view> area_unit_words() {
  return words_of(area);
}
std::vector<std::string_view> distance_unit_words() {
  return words_of(distance);
}

tl::expected<double, Refusal> parse_number(std::string_view text) {
  const auto figure = leading_figure(text, text);
  if (!figure) return tl::make_unexpected(figure.error());
  if (!figure->rest.empty())
    return refuse({"nothing may follow the number here", "plain decimals: 3, 0.82, .82",
                   fmt::format("leave out \"{}\"", figure->rest), 0},
                  text, figure->rest);
  return figure->value;
}

tl::expected<int, Refusal> parse_whole_number(std::string_view text) {
  const auto value = parse_number(text);
  if (!value) return tl::make_unexpected(value.error());
  if (*value != std::floor(*value) || *value > 999'999'999)
    return refuse({"a whole number is needed here", "digits only", "", 0}, text, trimmed(text));
  return static_cast<int>(*value);
}

tl::expected<double, Refusal> parse_length_mm(std::string_view text, Units units) {
  return measured(leading_figure(text, text), text, length, bare_factor_mm(units));
}

tl::expected<double, Refusal> parse_coordinate_mm(std::string_view text, Units units) {
  return measured(leading_signed_figure(text, text), text, length, bare_factor_mm(units));
}

tl::expected<double, Refusal> parse_film_um(std::string_view text) {
  return measured(leading_figure(text, text), text, film, 1);
}

tl::expected<std::vector<double>, Refusal> parse_lengths_mm(std::string_view text, Units units) {
  return measured_all(text, length, bare_factor_mm(units));
}

tl::expected<std::vector<double>, Refusal> parse_films_um(std::string_view text) {
  return measured_all(text, film, 1);
}

tl::expected<Size, Refusal> parse_size(std::string_view text, Units units) {
  const std::string allowed = "300x120 mm, 40 (for 40x40)";
  const auto along = leading_figure(text, text);
  if (!along) return tl::make_unexpected(along.error());
  std::string_view rest = along->rest;
  double across = along->value;
  if (const std::size_t by = by_sign(rest)) {
    const auto second = leading_figure(rest.substr(by), text);
    if (!second) return tl::make_unexpected(second.error());
    across = second->value;
    rest = second->rest;
    if (by_sign(rest)) return refuse({"a size has two figures", allowed, "", 0}, text, rest);
  } else if (rest.find('x') != std::string_view::npos) {
    return refuse(
        {"a size is two figures with x between them, the unit at the end", allowed, "", 0}, text,
        rest);
  }
  double mm = bare_factor_mm(units);
  if (!rest.empty()) {
    const auto known = factor(rest, text, length);
    if (!known) return tl::make_unexpected(known.error());
    mm = *known;
  }
  return Size{along->value * mm, across * mm};
}

tl::expected<double, Refusal> parse_area_m2(std::string_view text) {
  return with_required_unit(text, area, "0.31 m2");
}

tl::expected<double, Refusal> parse_distance_km(std::string_view text) {
  return with_required_unit(text, distance, "61200 mi or 98500 km");
}

tl::expected<double, Refusal> parse_share(std::string_view text) {
  const auto figure = leading_figure(text, text);
  if (!figure) return tl::make_unexpected(figure.error());
  if (figure->rest != "%")
    return refuse(
        {"a share is written in per cent", "0 % to 100 %",
         figure->rest.empty()
             ? fmt::format("write {} %", figure->value < 1 ? figure->value * 100 : figure->value)
             : "",
         0},
        text, figure->rest.empty() ? trimmed(text) : figure->rest);
  if (figure->value > 100)
    return refuse({"a share is not over 100 %", "0 % to 100 %", "", 0}, text, trimmed(text));
  return figure->value / 100;
}

}  // namespace tinworm::quantity
