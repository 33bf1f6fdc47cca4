// How zones, spots and their steps are called in text.
#pragma once

#include <string>
#include <vector>

#include "output/weigh_text.hpp"
#include "weighing/result.hpp"

namespace tinworm::output {

std::string heading(const std::string& text, const TextStyle& style);

std::string zone_number(int number, const std::string& own);  // "51", "own-a"
std::string zone_title(const weighing::Zone& zone);           // "51 outer sill, left"
std::string zone_title(const weighing::Result& result, int number, const std::string& own);

// "thin", or "bloom to thin": from the upper to the lower end of the metal left. Says the likely
// step where it is neither.
std::string step_text(weighing::Step step, weighing::Step mildest, weighing::Step worst);
std::string evidence_text(weighing::Evidence evidence);  // "only looked at" for looked

// "41–44, 51": numbers in order, runs of three or more joined.
std::string zone_ranges(std::vector<int> numbers);

// "Wherry 1200, built 1967, 61200 mi": the odometer as it was typed
std::string car_text(const survey::Car& car);

}  // namespace tinworm::output
