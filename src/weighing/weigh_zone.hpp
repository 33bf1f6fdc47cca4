// One zone weighed: its spots, its repairs, and what they come to together.
#pragma once

#include <string>
#include <vector>

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/gauging.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

struct Context {
  const survey::Survey& survey;
  const rules::Rules& rules;
  const Gauging& gauging;
  const std::vector<const body::Mount*>& mounts;  // those that count
};

// Everything of the zone but its share of the burden and the ranks of its spots.
Zone weigh_zone(const ZoneFacts& facts, const Context& context);

// Whether rust, damage or a repair that can't be relied on was found in it, however it was seen: it
// then counts at its place, though the rest of a zone known by tap stays unknown.
bool has_finding(const Zone& zone);

}  // namespace tinworm::weighing
