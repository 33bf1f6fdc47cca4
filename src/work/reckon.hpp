// Hours, weld, sheet and money of what is cut.
#pragma once

#include "rates/rates.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Sets hours, weld, sheet and `at_most` of a task from its cuts and `hidden`; the high hours are
// not raised yet. Hours: to cut out and make each piece, and its perimeter by the weld speed;
// together at most those of the whole job, each of the three. A pinhole: the rate for it, at worst
// a piece. A cut that may not be needed counts as a treatment at the low figure. The sheet is at
// most the part's own area, before the allowance. Its original thickness: the survey's, else the
// body plan's; what sound metal of it measured where that is more by over 10 % (common practice:
// sheet varies by as much).
void reckon_cuts(Task& task, const weighing::Zone& zone, const weighing::ZoneFacts& facts,
                 const rates::Rates& rates);

// Hours of work with the consumables that go with them, and sheet of that mass.
Range cost(const Range& hours, const Range& mass_kg, const rates::Rates& rates);

// Thickness to buy for an original of `sheet_mm`: the next in stock not under it. Stock: 0.8, 0.9,
// 1, 1.2, 1.5, 1.6, 2, 2.5 and 3 mm (memory); over that the next half millimetre.
double stock_mm(double sheet_mm);

}  // namespace tinworm::work
