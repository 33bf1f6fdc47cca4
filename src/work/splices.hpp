// Questions about new seams: how long a piece, how near another seam. Only where a published source
// gives a figure, by the kind of part nearest to it.
#pragma once

#include <string>
#include <vector>

#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

// Of the sure cuts of one part. Legs and rails by US Army TM 9-3990-260-14&P, 5-6 (frames of
// vehicles): a splice of 150 mm or more, that goes on to another weld within 300 mm. Other boxes of
// the main structure by US Army TM 55-8115-203-23, 3-19 to 3-28 (containers): an insert of 150 mm
// or more, its ends 150 mm or more from other seams. Cracks by the latter too: under 50 mm filled.
// Both are analogies for body sheet, so they ask and change no cut.
std::vector<std::string> splice_questions(const std::vector<Cut>& cuts,
                                          const weighing::ZoneFacts& zone);

}  // namespace tinworm::work
