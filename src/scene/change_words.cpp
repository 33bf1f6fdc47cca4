#include "scene/change_words.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "history/words.hpp"
#include "scene/naming.hpp"
#include "scene/setting.hpp"
#include "scene/showing.hpp"

namespace tinworm::scene {
namespace {

using history::Change;
using history::Comparison;
using history::RateFrom;

constexpr double mm_per_thou = 0.0254;

// With a minus that is as wide as a plus, and none before nought.
std::string figure(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  if (text.find_first_of("123456789") == std::string::npos && text[0] == '-') text.erase(0, 1);
  return text[0] == '-' ? "\u2212" + text.substr(1) : text;
}

std::string rate_figure(double mm_per_year, Units units) {
  return units == Units::inch ? figure(mm_per_year / mm_per_thou, 2) : figure(mm_per_year, 3);
}

}  // namespace

std::string sheet_figure(double mm, Units units) {
  return units == Units::inch ? figure(mm / mm_per_thou, 1) : figure(mm, 2);
}

std::string sheet_words(double mm, Units units) {
  return fmt::format("{}{}{}", sheet_figure(mm, units), no_break,
                     units == Units::inch ? "thou" : "mm");
}

std::string zone_words(const history::Zone& zone) {
  const std::string_view side = side_name(zone.side);
  return side.empty() ? zone.name : fmt::format("{}, {}", zone.name, side);
}

std::string place_words(const Comparison& comparison, const history::Place& place) {
  return fmt::format("{}, {}", zone_words(comparison.zone_of(place)),
                     place.zone_mean ? "mean of its readings" : place.name);
}

std::string date_words(const Comparison& comparison, std::size_t survey) {
  const auto& date = comparison.surveys[survey].survey.visit.date;
  const auto of_that_year = std::ranges::count_if(comparison.surveys, [&](const auto& each) {
    return each.survey.visit.date.year == date.year;
  });
  return of_that_year > 1 ? date.text() : fmt::format("{}", date.year);
}

std::string change_words(const history::Place& place, Units units) {
  const Showing showing = showing_of(place);
  if (showing == Showing::thicker)
    return fmt::format("reads {} thicker", sheet_words(-place.lost_mm->value, units));
  if (place.change != Change::worse) return std::string(name_of(showing));
  const bool measured = place.lost_mm && place.lost_mm->low > 0;
  if (measured) return fmt::format("{}{}lost", sheet_words(place.lost_mm->value, units), no_break);
  return place.why.empty() ? "worse" : place.why;
}

std::string since_words(const Comparison& comparison, const history::Place& place, Units units) {
  const std::string since = place.from < place.to
                                ? fmt::format("since {}", date_words(comparison, place.from))
                                : std::string();
  if (!place.lost_mm) return since;
  const auto& lost = *place.lost_mm;
  if (lost.high < 0)
    return fmt::format("than in {} ({} to {})", date_words(comparison, place.from),
                       sheet_figure(-lost.high, units), sheet_figure(-lost.low, units));
  std::string text = fmt::format("{} ({} to {})", since, sheet_figure(lost.low, units),
                                 sheet_figure(lost.high, units));
  if (lost.low > 0 && place.lost_share)
    text += fmt::format(", {:.0f}{}% of the sheet", 100 * *place.lost_share, no_break);
  return text;
}

std::string lost_words(const history::Place& place, Units units) {
  const auto& lost = *place.lost_mm;
  const std::string share = lost.low > 0 && place.lost_share
                                ? fmt::format(", {:.0f}{}%", 100 * *place.lost_share, no_break)
                                : "";
  return fmt::format("{}{}lost ({} to {}){}", sheet_words(lost.value, units), no_break,
                     sheet_figure(lost.low, units), sheet_figure(lost.high, units), share);
}

std::string rate_source_words(const history::Place& place) {
  const auto measured =
      std::count_if(place.records.begin() + static_cast<long>(place.from), place.records.end(),
                    [](const auto& each) { return each.thickness.has_value(); });
  switch (place.rate->from) {
    case RateFrom::difference:
      return "between two surveys";
    case RateFrom::line:
      return fmt::format("line through {} surveys", measured);
    case RateFrom::last_two:
      return fmt::format("last two of {} surveys", measured);
    case RateFrom::planning:
      break;
  }
  return "not measured: planning figure for how the car is kept";
}

std::string rate_figures(const history::Place& place, Units units) {
  const auto& rate = place.rate->per_year;
  const std::string low = rate_figure(rate.low, units), high = rate_figure(rate.high, units);
  if (place.rate->from == RateFrom::planning) return fmt::format("{} to {}", low, high);
  return fmt::format("{} ({} to {})", rate_figure(rate.value, units), low, high);
}

std::string rate_words(const history::Place& place, Units units) {
  if (!place.rate) return "";
  const auto& rate = place.rate->per_year;
  const std::string_view unit = units == Units::inch ? "thou" : "mm";
  if (place.rate->from == RateFrom::planning)
    return fmt::format("{} to {} {} a year, {}", rate_figure(rate.low, units),
                       rate_figure(rate.high, units), unit, rate_source_words(place));
  return fmt::format("{} {} a year ({} to {}), {}", rate_figure(rate.value, units), unit,
                     rate_figure(rate.low, units), rate_figure(rate.high, units),
                     rate_source_words(place));
}

std::string limit_words(const history::Place& place) {
  if (!place.outlook) return "";
  if (place.outlook->past_limit) return "past it";
  const auto& life = place.outlook->years_to_limit;
  return life ? history::life_text(*life) : "";
}

std::string next_survey_words(const history::NextSurvey& next) {
  if (!next.date) return capitalised(next.why) + ".";
  return fmt::format("{}: {}.", next.date->text(), next.why);
}

std::string caution_words(const Comparison& comparison) {
  return comparison.caution + " Ranges for the years to come are for planning: no date of failure.";
}

}  // namespace tinworm::scene
