// The units of each kind of quantity, what each is worth, and how messages speak of them. Capitals
// don't matter.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/refusal.hpp"

namespace tinworm::quantity {

struct Unit {
  std::string_view word;
  double factor;
};

struct Kind {
  std::string_view name;     // "a length"
  std::string_view unit_of;  // "of length"
  std::span<const Unit> units;
  std::string_view allowed;
};

constexpr double inch_mm = 25.4;  // the international one of 1959, exact

const Kind& length_kind();    // in mm
const Kind& film_kind();      // in um
const Kind& area_kind();      // in m2
const Kind& distance_kind();  // in km

// What one of the unit is worth. `word` is a view into `whole`.
tl::expected<double, Refusal> factor_of(std::string_view word, std::string_view whole,
                                        const Kind& kind);
bool is_unit(std::string_view word, const Kind& kind);
bool is_inch(std::string_view word);

// The refusal with the place of `at`, a view into `whole`.
tl::unexpected<Refusal> refused(Refusal refusal, std::string_view whole, std::string_view at);

}  // namespace tinworm::quantity
