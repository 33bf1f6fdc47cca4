// How long a place has by its rate, and when to look again: planning ranges, never a date of
// failure.
#pragma once

#include "history/comparison.hpp"
#include "history/zone_history.hpp"
#include "rules/rules.hpp"

namespace tinworm::history {

// What metal is lost a year by how the car is kept, where no gauge has told: common practice.
// None where the survey doesn't say how it is kept.
std::optional<Rate> planning_rate(const survey::Survey& survey, const rules::Rules& rules);

// From the latest reading and the governing rate to the limit for load-bearing sheet and to a hole:
// in a straight line at both ends of the rate, and by the power law of ISO 9224 (b .523 and .575)
// from the loss so far and the age, of the car or since the last repair. None where the latest
// survey has no reading, or no sheet to hold it against that was measured or stated, or there is no
// rate. On skin the limit stands for comparison only.
std::optional<Outlook> outlook_of(const Place& place, const ZoneHistory& zone,
                                  const rules::Rules& rules);

// Half the shortest straight-line life to the limit of any load-bearing place at its measured rate
// (past the limit: to a hole), at most what is usual for how the car is kept. After the repair
// where the verdict is not to drive. Source of the half: API 510, 10th edition, 6.5.1.1.
NextSurvey next_survey(const Comparison& comparison, const rules::Rules& rules);

}  // namespace tinworm::history
