// Which repairs came between surveys, so that what was measured before and after is not the same
// metal.
#pragma once

#include <vector>

#include "history/year.hpp"

namespace tinworm::history {

struct Mended {  // a repair that no earlier survey has
  const survey::Repair* repair = nullptr;
  std::size_t recorded = 0;  // the first survey that has it
  std::size_t starts = 0;    // the first survey of the new history; 0: older than all of them
  // A survey after its date saw the zone and has no such repair.
  bool missed_before = false;
};

// Repairs of metal new in any survey but the first, and marks in `zone` where a new history starts.
// A treatment is no repair of metal. By its date a repair lies between the surveys before and after
// it; one without a date, before the survey that has it first. Repairs are the same where kind and
// date agree, or a date is wanting.
std::vector<Mended> mark_mended(std::vector<ZoneYear>& zone);

// The first survey of the history that `survey` belongs to.
std::size_t history_start(const std::vector<ZoneYear>& zone, std::size_t survey);

}  // namespace tinworm::history
