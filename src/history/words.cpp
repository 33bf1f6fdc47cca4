#include "history/words.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace tinworm::history {
namespace {

using quantity::Units;

constexpr double mm_per_thou = 0.0254;

// 0.12 or 4.7, in the unit of sheet metal; never -0.00.
std::string figure(double mm, Units units, int decimals) {
  const double value = units == Units::mm ? mm : mm / mm_per_thou;
  const int places = units == Units::mm ? decimals : decimals - 1;
  std::string text = fmt::format("{:.{}f}", value, places);
  const bool zero = text.find_first_not_of("-0.") == std::string::npos;
  return zero && text.front() == '-' ? text.substr(1) : text;
}

const char* unit(Units units) {
  return units == Units::mm ? "mm" : "thou";
}

std::string years_text(double whole) {
  return whole == 1 ? "1 year" : fmt::format("{:.0f} years", whole);
}

std::string since(const Place& place, const Comparison& comparison) {
  return comparison.surveys[place.from].survey.visit.date.text();
}

std::string lost_text(const Place& place, const Comparison& comparison, Units units) {
  const weighing::Span& lost = *place.lost_mm;
  std::string text = fmt::format("{} {} lost since {} ({} to {})", figure(lost.value, units, 2),
                                 unit(units), since(place, comparison), figure(lost.low, units, 2),
                                 figure(lost.high, units, 2));
  if (place.lost_share) text += fmt::format(", {:.0f} % of the sheet", 100 * *place.lost_share);
  return text;
}

std::string same_text(const Place& place, const Comparison& comparison, Units units) {
  return fmt::format("no change shown since {}; under {} {} none would have shown",
                     since(place, comparison), figure(*place.smallest_visible_mm, units, 2),
                     unit(units));
}

}  // namespace

const char* const planning_caution =
    "Rates and times are ranges for planning, no date of failure: rust runs faster where it is "
    "wet, salted or hidden.";

std::string life_text(const metal::LifeRange& life) {
  if (life.low_years >= farthest_years) return fmt::format("over {:.0f} years", farthest_years);
  const double low = std::floor(life.low_years);
  std::string least = low < 1 ? "under a year" : years_text(low);
  if (!life.high_years || *life.high_years > farthest_years)
    return least + (low < 1 ? ", or more" : " or more");
  const double high = std::ceil(*life.high_years);
  if (high <= 1 || low == high) return least;
  return fmt::format("{} to {}", low < 1 ? least : fmt::format("{:.0f}", low), years_text(high));
}

std::string least_shown_text(const Comparison& comparison, Units units) {
  std::vector<double> all_mm;
  for (const Zone& zone : comparison.zones)
    for (const Place& place : zone.places)
      if (place.change == Change::same && place.smallest_visible_mm)
        all_mm.push_back(*place.smallest_visible_mm);
  if (all_mm.empty()) return "";
  const auto [least, most] = std::ranges::minmax_element(all_mm);
  const std::string low = figure(*least, units, 2), high = figure(*most, units, 2);
  return fmt::format("{}{} {}", low == high ? "" : low + " to ", high, unit(units));
}

std::string change_words(Change change) {
  std::string text(word(change));
  std::ranges::replace(text, '-', ' ');
  return text;
}

std::string place_title(const Place& place) {
  return place.zone_mean ? "mean of the zone" : place.name;
}

std::string change_text(const Place& place, const Comparison& comparison, Units units) {
  switch (place.change) {
    case Change::worse:
      if (!place.lost_mm || place.lost_mm->low <= 0)
        return fmt::format("{}, between {} and {}", place.why, since(place, comparison),
                           comparison.latest().survey.visit.date.text());
      return lost_text(place, comparison, units) + (place.why.empty() ? "" : "; " + place.why);
    case Change::same:
      return same_text(place, comparison, units) +
             (place.zone_mean ? "; " + place.why : std::string());
    case Change::repaired:
      return fmt::format("repaired since {} ({})", since(place, comparison), place.why);
    case Change::no_longer_visible:
      return fmt::format("{}; last noted in {}", place.why, since(place, comparison));
    case Change::newly_seen:
    case Change::not_comparable:
      return place.why;
  }
  return place.why;
}

std::string rate_text(const Place& place, Units units) {
  if (!place.rate) return "";
  const metal::RateRange& rate = place.rate->per_year;
  if (place.rate->from == RateFrom::planning)
    return fmt::format("rate not measured; by how the car is kept {} to {} {} a year",
                       figure(rate.low, units, 2), figure(rate.high, units, 2), unit(units));
  const auto read =
      std::count_if(place.records.begin() + static_cast<long>(place.from), place.records.end(),
                    [](const Record& each) { return each.thickness.has_value(); });
  const std::string how = place.rate->from == RateFrom::difference ? ""
                          : place.rate->from == RateFrom::line
                              ? fmt::format(", by a line through {} readings", read)
                              : ", by the last two readings, the faster ones";
  return fmt::format("{} {} a year ({} to {}){}", figure(rate.value, units, 3), unit(units),
                     figure(rate.low, units, 3), figure(rate.high, units, 3), how);
}

std::string outlook_text(const Place& place, Units units) {
  if (!place.outlook) return "";
  const Outlook& outlook = *place.outlook;
  const std::string limit =
      fmt::format("the limit of {} {}", figure(outlook.limit_mm, units, 2), unit(units));
  std::string text;
  if (outlook.past_limit)
    text = "past " + limit;
  else if (outlook.years_to_limit)
    text = fmt::format("to {}: {}", limit, life_text(*outlook.years_to_limit));
  if (outlook.years_to_hole)
    text +=
        fmt::format("{}to a hole: {}", text.empty() ? "" : "; ", life_text(*outlook.years_to_hole));
  return text;
}

}  // namespace tinworm::history
