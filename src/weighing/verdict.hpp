// The verdict, by rule and never by burden; what could be worse; what to open up first.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "body/plan.hpp"
#include "rules/rules.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

struct Level {
  Verdict verdict = Verdict::not_known;  // not_known: this place asks for nothing
  std::string_view rule;
};

// What one place asks for. Needs its zone's repairs, role and steps.
Level level(const Spot& spot, const Zone& zone);
// The same at its low end: judged places counting as measured, may-be-near as near, a repair whose
// joint isn't known as one that can't be relied on.
Level level_at_low(const Spot& spot, const Zone& zone);

// Where each rule comes from, in words, and which of its constants a rules file changed. The rule
// must be one of method's names.
std::string rule_source(std::string_view rule, const rules::Rules& rules);

// Sets verdict, could_be, open_up_first, reasons, open_up. Needs zones, coverage and rank.
void judge(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules);

// Gives every place with something found its rank, worst first: by level, then near, main, local,
// skin, then metal left, then zone number, then order in the file.
void rank(std::vector<Zone>& zones);

}  // namespace tinworm::weighing
