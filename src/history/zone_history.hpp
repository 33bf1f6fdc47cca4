// One zone through all surveys: what its places are compared in.
#pragma once

#include <vector>

#include "history/mending.hpp"
#include "history/year.hpp"

namespace tinworm::history {

struct ZoneHistory {
  std::vector<ZoneYear> years;  // marked by mark_mended
  std::vector<Mended> mended;
  bool one_gauge = true;  // in every survey
};

}  // namespace tinworm::history
