// Which of the trade's jobs a part belongs to, and its turn in the order of structural work.
#pragma once

#include <string_view>

#include "rates/rates.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::work {

rates::Job job_of(std::string_view zone_name);  // by the words of its name

bool is_sill(rates::Job job);  // bracing first, one side at a time
bool lets_water_in(rates::Job job, std::string_view zone_name);  // scuttle, screens, roof

// Common practice: first what others hang from (legs, towers, hangers, bulkhead), then floors and
// cross-members, feet of posts, inner sill, membrane, outer sill, outer skins last.
int stage(const weighing::ZoneFacts& zone);

// Drawn with the skin on: seen from outside, to be painted as the body is.
bool is_outside(const weighing::ZoneFacts& zone);

}  // namespace tinworm::work
