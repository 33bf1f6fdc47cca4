// The rates file: what work takes and costs where it is to be done.
//
//   rates: 1                   # required: the format, always 1
//   name: The island workshop  # optional: one line of free words, at most 80 characters
//   currency: EUR              # three capitals, ISO 4217; EUR where it is left out
//   hour: 72                   # then any rates of rates.cpp by their keys, in any order, each at
//   sheet: 6 per kg            # most once; what isn't named keeps its default
//   weld-speed: .2 .3 .4 m/h   # a range: low, likely, high; one figure alone is all three
//   outer-sill: 10 14 20
//   consumables: 8 10 15 %     # a share: with % or as a fraction, .08 .10 .15
//
// Nothing else stands in it, and nothing is nested. A value is a single plain scalar, without
// quotes, sign or exponent; its unit may be left out, or stands once at the end. Lengths may be in
// other units, as in a survey. Each figure must lie within the rate's bounds (both included). With
// another currency, `hour` and `sheet` must be given: their defaults are euros.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "rates/rates.hpp"
#include "yaml/problem.hpp"

namespace tinworm::rates {

struct RatesFile {
  std::string name;  // empty where none is given
  Rates rates;
};

struct Reading {
  std::optional<RatesFile> file;  // none if any problem stands in the way
  yaml::Problems problems;        // all of them, in order of place
};

// Reports every mistake in one go: keys there are none of, with the one probably meant; values of
// the wrong unit, out of order or out of bounds, with default and standing; duplicates.
Reading read_rates(std::string_view yaml);

}  // namespace tinworm::rates
