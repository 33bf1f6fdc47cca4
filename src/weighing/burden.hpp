// How much the rust weighs: 0 none, 1 all. And how much of the car was seen.
#pragma once

#include <vector>

#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// The least metal a zone may still have where nothing says so: all of it where nothing was
// recorded, seen in part or found by tap alone, or an inside that wasn't seen; 1 where nothing is
// hidden.
double least_unproved(const ZoneFacts& facts, const rules::Rules& rules);

// Share of the area of one role's fitted plan zones that was seen (part counts its share, scope
// half, tap and hidden nothing), and that has a reading which was used.
Coverage coverage(const std::vector<Zone>& zones, const std::vector<ZoneFacts>& facts,
                  body::Role role);

// What a skin zone of the plan enters the skin burden with, at its likely figure: by area, by depth
// or holed, whichever is most.
double skin_damage(const Zone& zone, const rules::Rules& rules);

struct Burdens {
  Burden structure, skin, shell;
  double one_zone_gone = 0;
  std::vector<double> shares;  // of the shell burden, one for each zone; sum 1, or all 0
};

// `zones` and `facts` side by side, spots weighed. Structure: (sum w D^p / sum w)^(1/p) over main
// and local zones, w in the numerator 1 for main or near and 0.5 for local. Skin: area-weighted
// mean. Shell: S + 0.2 K (1 - S). Value over seen zones and those where something was found; low
// with the others at 0; high with all that wasn't seen at the worst that is reasonable. Always low
// <= value <= high.
Burdens burdens(const std::vector<Zone>& zones, const std::vector<ZoneFacts>& facts,
                const rules::Rules& rules);

}  // namespace tinworm::weighing
