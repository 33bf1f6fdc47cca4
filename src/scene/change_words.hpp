// The words on papers for what a comparison holds. Figures keep to their units by no-break spaces.
#pragma once

#include <string>

#include "history/comparison.hpp"
#include "quantity/length.hpp"

namespace tinworm::scene {

using quantity::Units;

std::string sheet_words(double mm, Units units);   // "0.12 mm", "4.7 thou"
std::string sheet_figure(double mm, Units units);  // the same without its unit

// "outer sill, left, rear end"; of a zone's mean "outer sill, left, mean of its readings".
std::string place_words(const history::Comparison& comparison, const history::Place& place);
std::string zone_words(const history::Zone& zone);  // "outer sill, left"

// "2017"; the whole date where another survey is of that year.
std::string date_words(const history::Comparison& comparison, std::size_t survey);

// "0.12 mm lost", "reads 0.05 mm thicker", "holed since", "newly seen".
std::string change_words(const history::Place& place, Units units);

// What stands behind it: "since 2017 (0.05 to 0.19), 11 % of the sheet". May be empty.
std::string since_words(const history::Comparison& comparison, const history::Place& place,
                        Units units);

// In one line of a table: "0.12 mm lost (0.05 to 0.19), 11 %". The place must have been measured.
std::string lost_words(const history::Place& place, Units units);

// "0.015 mm a year (0.006 to 0.024), line through 3 surveys". Empty without a rate.
std::string rate_words(const history::Place& place, Units units);
// Its parts, of a place with a rate: "0.015 (0.006 to 0.024)", a year; "line through 3 surveys".
std::string rate_figures(const history::Place& place, Units units);
std::string rate_source_words(const history::Place& place);

// "3 to 11 years", "3 years or more", "past it". Empty where nothing can be said.
std::string limit_words(const history::Place& place);

// "2027-10: half the time that …", "After the repair: …".
std::string next_survey_words(const history::NextSurvey& next);

// The comparison's own, and that ranges are for planning.
std::string caution_words(const history::Comparison& comparison);

}  // namespace tinworm::scene
