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

// What one place asks for, by what was measured, felt or holed there and the table of places:
//
//   the place is              weak or cracked      holed             pinhole   bad repair
//   on, to 10 cm or doubled   keep parked          keep parked       keep      keep parked
//   on, to 30 cm              keep parked          keep parked       mend      keep parked
//   into, to 20 cm            keep parked          over 25 mm or     mend      mend
//                                                  breaking: keep
//   into beyond, near         mend                 mend              mend      mend
//
// Weak: gives, crunches, breaks, or the metal beside any hole under half. One wall of a load box
// whose others are sound near by is to be mended, unless the mount stands on it. Needs its zone's
// repairs, role and steps. Source: common practice, drawn from small cases judged before any rule
// was read; the 30 cm, UK MOT inspection manual, cars, Appendix A section 2.
Level level(const Spot& spot, const Zone& zone, const rules::Rules& rules);
// The same at its low end: judged places counting as measured, may-be as is, a place that is likely
// new metal and what is stuffed as a hole over 25 mm, a repair whose joint isn't known as one that
// can't be relied on.
Level level_at_low(const Spot& spot, const Zone& zone, const rules::Rules& rules);

// Whether a part was felt firm, measured, scoped, or is a single sheet seen bare.
bool is_known(const Zone& zone, const ZoneFacts& facts);

// The side that a gap tells, else those that its words name; both where they name none.
std::vector<body::Side> sides_of(const survey::Gap& gap);

// Whether a gap differs between wheels and lift by as much as tells of a shell that bends.
bool moves(const survey::Gap& gap, const rules::Rules& rules);

// Where each rule comes from, in words, and which of its constants a rules file changed. The rule
// must be one of method's names.
std::string rule_source(std::string_view rule, const rules::Rules& rules);

// Sets verdict, could_be, open_up_first, reasons, open_up. Needs zones, coverage and rank.
void judge(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules);

}  // namespace tinworm::weighing
