// How each zone was seen: the survey's `seen:` in ranges, and a zone's own `seen:`.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "survey/page.hpp"

namespace tinworm::survey {

// The number of a zone from its two digits or its name; a problem where the body plan lacks it.
// Without a plan any number from 10 to 98 will do.
std::optional<int> zone_number(Page& page, Place place, std::string_view text);

// `bare: 51-58 61`, `not-fitted: [18]`, `hidden: {71 72: carpet glued down}`, `part: {13: 60 %}`.
// A range has ends that the body has, and means the zones it has between them.
std::map<int, Seen> read_seen(Page& page, const yaml::Node& node);

// In a zone: `bare`, `part 60 %`, `hidden, carpet glued down`, `{hidden: carpet glued down}`.
Seen read_zone_seen(Page& page, const yaml::Node& node);

// A zone that was hidden, not fitted or named nowhere has nothing found in it.
void check_findings_were_seen(Page& page, std::string_view zone_name, const Seen& seen,
                              const Zone& zone);

}  // namespace tinworm::survey
