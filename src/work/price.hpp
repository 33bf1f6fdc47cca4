// Price arithmetic, for the owner's report alone: private, and on no other paper.
#pragma once

#include <optional>

#include "survey/survey.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Worth when sound, less the work, less what is asked, in the plan's currency; under 0: it costs
// more than it would be worth. likely: by the total's mean; high: by the sum of the low figures;
// low: by the figure not exceeded in 80 of 100, with the contingency's high end. Taxes, fees and
// what else is wrong with the car aren't in it. None where a price is missing or in another
// currency than the rates.
std::optional<Range> left_over(const Plan& plan, const survey::Price& price);

}  // namespace tinworm::work
