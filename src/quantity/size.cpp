#include <array>
#include <string>

#include <fmt/format.h>

#include "quantity/length.hpp"
#include "quantity/line.hpp"

namespace tinworm::quantity {
namespace {

constexpr std::string_view sizes = "300x120 mm, 3\" x 1\", 250 (its width not known)";
constexpr std::array<std::string_view, 4> by_signs{"x", "X", "×", "*"};

struct Sign {  // between the figures of a size
  std::size_t at = std::string_view::npos;
  std::size_t length = 0;
};

Sign by_sign(std::string_view text) {
  Sign first;
  for (const std::string_view sign : by_signs)
    if (const std::size_t at = text.find(sign); at < first.at) first = {at, sign.size()};
  return first;
}

// The unit after the first figure: none, or the one that ends the size.
tl::expected<void, Refusal> same_unit(std::string_view first, const FigureLine& line) {
  if (first.empty()) return {};
  const auto along = factor_of(first, line.whole, length_kind());
  if (!along) return tl::make_unexpected(along.error());
  const auto refuse = [&](std::string what, std::string cure) {
    return refused({std::move(what), std::string(sizes), std::move(cure), 0}, line.whole, first);
  };
  if (line.unit.empty())
    return refuse("the unit of a size stands at its end, or after both figures",
                  fmt::format("write {0} {2} x {1} {2} if both are meant", line.figures[0].text,
                              line.figures[1].text, first));
  const auto across = factor_of(line.unit, line.whole, length_kind());
  if (across && *across != *along)
    return refuse("the two figures of a size have one unit", "write both in the same");
  return {};
}

// One figure or two, and their unit.
tl::expected<FigureLine, Refusal> figures_of(std::string_view text) {
  auto along = written_figure(text, text);
  if (!along) return tl::make_unexpected(along.error());
  const std::string_view rest = along->figure.rest;
  FigureLine line{text, {std::move(*along)}, rest};
  const Sign by = by_sign(rest);
  if (by.length == 0) return line;
  auto across = written_figure(rest.substr(by.at + by.length), text);
  if (!across) return tl::make_unexpected(across.error());
  line.unit = across->figure.rest;
  line.figures.push_back(std::move(*across));
  if (const Sign third = by_sign(line.unit); third.length > 0)
    return refused({"a size has two figures", std::string(sizes), "", 0}, text,
                   line.unit.substr(third.at));
  const auto well = same_unit(trimmed(rest.substr(0, by.at)), line);
  if (!well) return tl::make_unexpected(well.error());
  return line;
}

tl::expected<std::vector<double>, Refusal> sides_mm(std::string_view text, Units units) {
  const auto line = figures_of(text);
  if (!line) return tl::make_unexpected(line.error());
  return in_unit(*line, length_kind(), bare_length(units));
}

}  // namespace

tl::expected<Size, Refusal> parse_size(std::string_view text, Units units) {
  const auto mm = sides_mm(text, units);
  if (!mm) return tl::make_unexpected(mm.error());
  if (mm->size() == 1) return Size{mm->front(), assumed_across_mm, false};
  return Size{mm->front(), mm->back()};
}

tl::expected<Size, Refusal> parse_hole(std::string_view text, Units units) {
  const auto mm = sides_mm(text, units);
  if (!mm) return tl::make_unexpected(mm.error());
  return Size{mm->front(), mm->back()};
}

}  // namespace tinworm::quantity
