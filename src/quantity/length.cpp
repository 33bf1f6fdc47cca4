#include "quantity/length.hpp"

#include <cmath>

#include <fmt/format.h>

#include "quantity/figure.hpp"
#include "quantity/fraction.hpp"
#include "quantity/line.hpp"
#include "quantity/unit.hpp"

namespace tinworm::quantity {
namespace {

tl::expected<double, Refusal> measured(const tl::expected<Figure, Refusal>& figure,
                                       std::string_view whole, const Kind& kind, const Bare& bare) {
  if (!figure) return tl::make_unexpected(figure.error());
  const std::string_view unit = figure->rest;
  const auto factor = unit.empty() ? bare.factor : factor_of(unit, whole, kind);
  if (!factor) return tl::make_unexpected(factor.error());
  const auto length = static_cast<std::size_t>(unit.data() - whole.data());
  const auto well =
      fraction_of_an_inch(*figure, whole.substr(0, length), unit, bare.is_inch, whole);
  if (!well) return tl::make_unexpected(well.error());
  return figure->value * *factor;
}

tl::expected<double, Refusal> with_required_unit(std::string_view text, const Kind& kind,
                                                 std::string_view example) {
  const auto figure = leading_figure(text, text);
  if (figure && figure->rest.empty())
    return refused({fmt::format("{} needs its unit", kind.name), std::string(kind.allowed),
                    fmt::format("write it as {}", example), 0},
                   text, trimmed(text));
  return measured(figure, text, kind, {});
}

}  // namespace

tl::expected<double, Refusal> parse_number(std::string_view text) {
  const auto figure = leading_figure(text, text);
  if (!figure) return tl::make_unexpected(figure.error());
  if (!figure->rest.empty())
    return refused({"nothing may follow the number here", "plain decimals: 3, 0.82, .82",
                    fmt::format("leave out \"{}\"", figure->rest), 0},
                   text, figure->rest);
  return figure->value;
}

tl::expected<int, Refusal> parse_whole_number(std::string_view text) {
  const auto value = parse_number(text);
  if (!value) return tl::make_unexpected(value.error());
  if (*value != std::floor(*value) || *value > 999'999'999)
    return refused({"a whole number is needed here", "digits only", "", 0}, text, trimmed(text));
  return static_cast<int>(*value);
}

tl::expected<double, Refusal> parse_length_mm(std::string_view text, Units units) {
  return measured(leading_fraction(text, text), text, length_kind(), bare_length(units));
}

tl::expected<double, Refusal> parse_coordinate_mm(std::string_view text, Units units) {
  return measured(leading_signed_fraction(text, text), text, length_kind(), bare_length(units));
}

tl::expected<double, Refusal> parse_film_um(std::string_view text) {
  return measured(leading_fraction(text, text), text, film_kind(), {});
}

tl::expected<std::vector<double>, Refusal> parse_lengths_mm(std::string_view text, Units units) {
  const auto line = figures_between_spaces(text);
  if (!line) return tl::make_unexpected(line.error());
  return in_unit(*line, length_kind(), bare_length(units));
}

tl::expected<double, Refusal> parse_area_m2(std::string_view text) {
  return with_required_unit(text, area_kind(), "0.31 m2");
}

tl::expected<double, Refusal> parse_distance_km(std::string_view text) {
  return with_required_unit(text, distance_kind(), "61200 mi or 98500 km");
}

tl::expected<double, Refusal> parse_share(std::string_view text) {
  const auto figure = leading_figure(text, text);
  if (!figure) return tl::make_unexpected(figure.error());
  if (figure->rest != "%")
    return refused(
        {"a share is written in per cent", "0 % to 100 %",
         figure->rest.empty()
             ? fmt::format("write {} %", figure->value < 1 ? figure->value * 100 : figure->value)
             : "",
         0},
        text, figure->rest.empty() ? trimmed(text) : figure->rest);
  if (figure->value > 100)
    return refused({"a share is not over 100 %", "0 % to 100 %", "", 0}, text, trimmed(text));
  return figure->value / 100;
}

}  // namespace tinworm::quantity
