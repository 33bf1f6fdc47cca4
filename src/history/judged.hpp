// What is said of one place between two surveys, before it is put down.
#pragma once

#include <optional>
#include <string>

#include "history/comparison.hpp"
#include "history/zone_history.hpp"

namespace tinworm::history {

struct Judged {
  Change change = Change::not_comparable;
  std::size_t from = 0;
  std::string why;
  std::optional<weighing::Span> lost_mm;  // 95 %
  std::optional<Rate> rate;
  bool by_look = false;  // as in Place
};

// By what a gauge says: lost for certain, within error, or thicker than can be.
Change change_of(const weighing::Span& lost_mm);

// A place of that zone, compared up to the latest survey; nothing is said of it yet.
Place place_in(const ZoneHistory& zone);

// Puts it down, with the share of the sheet by the place's baseline.
void take(Place& place, const Judged& judged);

}  // namespace tinworm::history
