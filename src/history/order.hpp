// Which surveys can be set beside one another, and in which order.
#pragma once

#include <string>
#include <vector>

#include "weighing/result.hpp"

namespace tinworm::history {

// By date, whatever the order they come in.
void sort_by_date(std::vector<weighing::Result>& results);

struct Refusal {
  std::string what;
  std::string cure;
};

// Why they can't be compared: one survey twice, dates that don't tell which came first, other
// bodies. All at once; empty where they can. `results` sorted by date.
std::vector<Refusal> refusals(const std::vector<weighing::Result>& results);

}  // namespace tinworm::history
