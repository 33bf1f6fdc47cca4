// Fractions of an inch, as rules and drills are marked: `3/64`, `4 1/2`, `4-1/2`.
#pragma once

#include <array>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/figure.hpp"
#include "quantity/refusal.hpp"

namespace tinworm::quantity {

inline constexpr std::array fraction_parts{2, 4, 8, 16, 32, 64, 128};  // that an inch may be cut into

// As `leading_figure`, but the number may be a fraction; who knows its unit says whether it may.
tl::expected<Figure, Refusal> leading_fraction(std::string_view text, std::string_view whole);

// The same with one sign allowed before the number.
tl::expected<Figure, Refusal> leading_signed_fraction(std::string_view text,
                                                      std::string_view whole);

// Refuses a fraction of anything but an inch. `written` is the figure and `whole` the text it
// stands in; without a unit it is of an inch where `bare_is_inch`.
tl::expected<void, Refusal> fraction_of_an_inch(const Figure& figure, std::string_view written,
                                                std::string_view unit, bool bare_is_inch,
                                                std::string_view whole);

}  // namespace tinworm::quantity
