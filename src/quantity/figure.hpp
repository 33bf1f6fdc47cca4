// The number at the front of a text and what stands after it: what every quantity starts with.
#pragma once

#include <string_view>

#include <tl/expected.hpp>

#include "quantity/refusal.hpp"

namespace tinworm::quantity {

struct Figure {
  double value = 0;
  std::string_view rest;     // after the number and the spaces that follow it; a view into the text
  bool is_fraction = false;  // `3/64`, `4 1/2`
};

// Plain decimals only, as length.hpp has it. Places in the refusal count from the start of `whole`,
// of which `text` must be a part.
tl::expected<Figure, Refusal> leading_figure(std::string_view text, std::string_view whole);

bool starts_number(std::string_view text);  // with a digit or a point

std::string_view trimmed(std::string_view text);  // without spaces and tabs at both ends

// Characters (not bytes) from the start of `whole` to the start of `part`, a view into it.
int offset_in(std::string_view whole, std::string_view part);

}  // namespace tinworm::quantity
