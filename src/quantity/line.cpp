#include "quantity/line.hpp"

#include <string>

#include "quantity/fraction.hpp"

namespace tinworm::quantity {
namespace {

// What stands between figures where only spaces may.
tl::expected<void, Refusal> between_figures(const FigureLine& line, const Kind& kind) {
  const std::string example = ".81 .78 .84 mm";
  if (line.unit.substr(0, 1) == ",")
    return refused({"spaces stand between numbers, not commas", example, "", 0}, line.whole,
                   line.unit);
  const std::string_view first = line.unit.substr(0, line.unit.find_first_of(" \t0123456789."));
  if (first.size() < line.unit.size() && is_unit(first, kind))
    return refused({"one unit for all numbers stands at the end", example, "", 0}, line.whole,
                   line.unit);
  return {};
}

}  // namespace

Bare bare_length(Units units) {
  return units == Units::inch ? Bare{inch_mm, true} : Bare{};
}

tl::expected<WrittenFigure, Refusal> written_figure(std::string_view text, std::string_view whole) {
  text = trimmed(text);
  const auto figure = leading_fraction(text, whole);
  if (!figure) return tl::make_unexpected(figure.error());
  const auto length = static_cast<std::size_t>(figure->rest.data() - text.data());
  return WrittenFigure{*figure, trimmed(text.substr(0, length))};
}

tl::expected<FigureLine, Refusal> figures_between_spaces(std::string_view text) {
  FigureLine line{text, {}, trimmed(text)};
  do {
    auto figure = written_figure(line.unit, text);
    if (!figure) return tl::make_unexpected(figure.error());
    line.unit = figure->figure.rest;
    line.figures.push_back(std::move(*figure));
  } while (starts_number(line.unit));
  return line;
}

tl::expected<std::vector<double>, Refusal> in_unit(const FigureLine& line, const Kind& kind,
                                                   const Bare& bare) {
  if (const auto well = between_figures(line, kind); !well)
    return tl::make_unexpected(well.error());
  double by = bare.factor;
  if (!line.unit.empty()) {
    const auto factor = factor_of(line.unit, line.whole, kind);
    if (!factor) return tl::make_unexpected(factor.error());
    by = *factor;
  }
  std::vector<double> values;
  for (const auto& [figure, text] : line.figures) {
    const auto well = fraction_of_an_inch(figure, text, line.unit, bare.is_inch, line.whole);
    if (!well) return tl::make_unexpected(well.error());
    values.push_back(figure.value * by);
  }
  return values;
}

}  // namespace tinworm::quantity
