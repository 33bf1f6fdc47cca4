// The rules file: constants of the method that a careful user sets otherwise.
//
//   rules: 1                          # required: the format, always 1
//   name: Stricter for salted roads   # optional: one line of free words, at most 80 characters
//   near-radius: 400 mm               # then any constants of constants.cpp by their keys,
//   repair-limit: 90 %                # in any order, each at most once; what isn't named
//   rust.pitting.least: .60           # keeps its default
//   exponent: 8
//
// Nothing else stands in it, and nothing is nested. A value is a single plain scalar, without
// quotes, sign or exponent, written as its constant's unit asks:
//
//   unit                                   written as                    a bare number is
//   mm                                     400 mm, 40 cm, 16 in, 3 thou  mm
//   um                                     500 um, .5 mm                 um
//   of the sheet, zone, area, main area    90 %, .90                     a fraction: .90 is 90 %
//   (none)                                 8                             the number itself
//
// It must lie within the constant's bounds (Constant::low and high, both included), and some
// constants keep an order among themselves: see order().
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rules/rules.hpp"
#include "yaml/problem.hpp"

namespace tinworm::rules {

// Keys whose values must not fall: "gives.least", "gives.likely", "gives.most". `strictly`: each
// must be over the one before, or a step would vanish.
struct Order {
  std::vector<std::string> keys;
  bool strictly = false;
};
const std::vector<Order>& order();

struct RulesFile {
  std::string name;  // empty where none is given
  Rules rules;
};

struct Reading {
  std::optional<RulesFile> file;  // none if any problem stands in the way
  yaml::Problems problems;        // all of them, in order of place
};

// Reports every mistake in one go: keys there are none of, with the one probably meant; values of
// the wrong unit or out of bounds, with default and source; constants out of order; duplicates.
Reading read_rules(std::string_view yaml);

}  // namespace tinworm::rules
