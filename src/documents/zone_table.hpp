// Every part of the car in one table: how it was seen, how it stands; and what the survey notes of
// whole parts.
#pragma once

#include "documents/flow.hpp"
#include "weighing/result.hpp"

namespace tinworm::documents {

// Each row is where the numbers on the sheets lead to.
void write_zone_table(Flow& flow, const weighing::Result& result);
std::string row_place(int zone);  // the name of its row, for links

}  // namespace tinworm::documents
