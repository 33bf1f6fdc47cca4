// Figures on one line and the unit that ends it.
#pragma once

#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "quantity/figure.hpp"
#include "quantity/length.hpp"
#include "quantity/refusal.hpp"
#include "quantity/unit.hpp"

namespace tinworm::quantity {

struct WrittenFigure {
  Figure figure;
  std::string_view text;  // as it stands on the line
};

struct FigureLine {
  std::string_view whole;  // where places count from; the rest are views into it
  std::vector<WrittenFigure> figures;
  std::string_view unit;  // what follows them; empty: none
};

struct Bare {  // what a figure without a unit is
  double factor = 1;
  bool is_inch = false;
};
Bare bare_length(Units units);

// The figure at the front of `text`, a part of `whole`.
tl::expected<WrittenFigure, Refusal> written_figure(std::string_view text, std::string_view whole);

tl::expected<FigureLine, Refusal> figures_between_spaces(std::string_view text);

// The figures in the kind's own unit; only inches may be fractions.
tl::expected<std::vector<double>, Refusal> in_unit(const FigureLine& line, const Kind& kind,
                                                   const Bare& bare);

}  // namespace tinworm::quantity
