// What lies beyond the last survey of a place: a short range for planning, never a date of failure.
#pragma once

#include <optional>

#include "history/comparison.hpp"

namespace tinworm::scene {

// From the last survey's reading between both ends of the rate. At most as long as the history and
// at most five years. None without a rate or a reading in the last survey.
struct Band {
  double from_year = 0, to_year = 0;
  double from_mm = 0, low_mm = 0, high_mm = 0;  // low and high at its end
};
std::optional<Band> band_of(const history::Comparison& comparison, const history::Place& place);

// Decimal, the middle of a date that doesn't tell the day.
double year_of(const history::Comparison& comparison, std::size_t survey);

}  // namespace tinworm::scene
