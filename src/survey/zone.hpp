// What was found in a zone, and zones the body plan doesn't know.
#pragma once

#include <optional>

#include "survey/page.hpp"

namespace tinworm::survey {

struct ZoneReading {
  Zone zone;
  std::optional<Seen> seen;  // where the zone itself says how it was seen
};

// `entry` is `51: {…}`; `plan` is null where the plan is not known.
ZoneReading read_zone(Page& page, const yaml::Entry& entry, const body::Zone* plan);

// `own-a: {name: …, role: …, side: …, …}`
OwnZone read_own_zone(Page& page, const yaml::Entry& entry);

bool is_own_zone(std::string_view key);  // own-a to own-z

}  // namespace tinworm::survey
