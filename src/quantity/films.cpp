#include <algorithm>
#include <string>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "quantity/length.hpp"
#include "quantity/line.hpp"

namespace tinworm::quantity {
namespace {

constexpr std::string_view films = "140 155 900 um, 900-1600, over 2000";

// The length of `>` or `over` at the front, what a gauge at its end is noted with; else 0.
std::size_t over_sign(std::string_view text) {
  if (text.substr(0, 1) == ">") return 1;
  constexpr std::string_view over = "over";
  return lower_case(text.substr(0, over.size())) == over ? over.size() : 0;
}

// The length of the hyphen or dash that makes a range of two figures.
std::size_t to_sign(std::string_view text) {
  if (text.substr(0, 1) == "-") return 1;
  constexpr std::string_view dash = "–";
  return text.substr(0, dash.size()) == dash ? dash.size() : 0;
}

struct FilmLine {
  FigureLine line;
  std::vector<std::size_t> over;  // which figures are off the scale
};

// One part of the line, a reading, a range or one off the scale, taken off its front.
tl::expected<void, Refusal> take_part(FilmLine& films_line) {
  FigureLine& line = films_line.line;
  const std::size_t before = over_sign(line.unit);
  auto figure = written_figure(line.unit.substr(before), line.whole);
  if (!figure) return tl::make_unexpected(figure.error());
  line.unit = figure->figure.rest;
  line.figures.push_back(*figure);
  const bool plus = line.unit.substr(0, 1) == "+";
  if (plus) line.unit = trimmed(line.unit.substr(1));
  if (before > 0 || plus) {
    films_line.over.push_back(line.figures.size() - 1);
    return {};
  }
  const std::size_t to = to_sign(line.unit);
  if (to == 0) return {};
  auto most = written_figure(line.unit.substr(to), line.whole);
  if (!most) return tl::make_unexpected(most.error());
  if (most->figure.value <= figure->figure.value)
    return refused({"a range goes from the thinner film to the thicker", std::string(films),
                    most->figure.value < figure->figure.value
                        ? fmt::format("write {}-{}", most->text, figure->text)
                        : fmt::format("write {}", figure->text),
                    0},
                   line.whole, figure->text);
  line.unit = most->figure.rest;
  line.figures.push_back(*most);
  if (line.unit.substr(0, 1) == "+") {  // 600-2000+
    line.unit = trimmed(line.unit.substr(1));
    films_line.over.push_back(line.figures.size() - 1);
  }
  return {};
}

}  // namespace

tl::expected<Films, Refusal> parse_films_um(std::string_view text) {
  FilmLine films_line{{text, {}, trimmed(text)}, {}};
  do {
    const auto taken = take_part(films_line);
    if (!taken) return tl::make_unexpected(taken.error());
  } while (starts_number(films_line.line.unit) || over_sign(films_line.line.unit) > 0);
  auto um = in_unit(films_line.line, film_kind(), {});
  if (!um) return tl::make_unexpected(um.error());
  Films read{std::move(*um), std::nullopt};
  for (const std::size_t i : films_line.over)
    read.over_um = std::max(read.over_um.value_or(0), read.um[i]);
  return read;
}

}  // namespace tinworm::quantity
