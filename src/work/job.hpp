// Which of the trade's jobs a part belongs to, and its turn in the order of structural work. By the
// body plan's word on it (body/job.hpp), never by its name; an own zone is another part.
#pragma once

#include <vector>

#include "body/job.hpp"
#include "rates/rates.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::work {

body::Job kind_of_part(const weighing::ZoneFacts& zone);

// What its hours go by. A membrane is reckoned as an inner sill, a roof as another part.
rates::Job job_of(body::Job part);

bool is_sill(rates::Job job);                          // bracing first, one side at a time
bool lets_water_in(const weighing::ZoneFacts& zone);   // scuttle, screens, roof
bool is_folded_skin(const weighing::ZoneFacts& zone);  // a door's: its edge goes round the frame
bool is_outside(const weighing::ZoneFacts& zone);  // drawn with the skin on: painted as the body

// Either says that it is welded or bolted to the other.
bool are_joined(const weighing::ZoneFacts& a, const weighing::ZoneFacts& b);

// Turn of a part: of two that are joined, the greater stands on the lesser. Common practice: what
// others hang from first (legs and rails, bulkhead, inner wings, then hangers and towers), floors
// and cross-members, doublers on them, feet of posts, inner sill, what stands on the inner sill
// (jacking point, outrigger), membrane, outer sill, outer skins last.
int stage(const weighing::ZoneFacts& zone, const std::vector<weighing::ZoneFacts>& all);

}  // namespace tinworm::work
