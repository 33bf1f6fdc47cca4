#include "scene/planning_band.hpp"

#include <algorithm>

namespace tinworm::scene {

double year_of(const history::Comparison& comparison, std::size_t survey) {
  return comparison.surveys[survey].survey.visit.date.middle_year();
}

std::optional<Band> band_of(const history::Comparison& comparison, const history::Place& place) {
  constexpr double longest_years = 5;
  const auto& now = place.last().thickness;
  if (!now || !place.rate) return std::nullopt;
  const auto first = std::ranges::find_if(
      place.records, [](const history::Record& each) { return each.thickness.has_value(); });
  const double last = year_of(comparison, place.last().survey);
  const double years = std::min(last - year_of(comparison, first->survey), longest_years);
  if (years <= 0) return std::nullopt;
  // Metal doesn't grow, and there is no less than none of it.
  const auto left = [&](double rate) {
    return std::max(0.0, now->metal_mm - std::max(0.0, rate) * years);
  };
  return Band{last, last + years, now->metal_mm, left(place.rate->per_year.high),
              left(place.rate->per_year.low)};
}

}  // namespace tinworm::scene
