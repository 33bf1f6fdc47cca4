// Whether a repair found on the car can be relied on.
#pragma once

#include <string>

#include "body/plan.hpp"
#include "quantity/length.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// Relied on, only if now sound: a new panel with seam, plug or spot weld; let in or lapped with a
// seam weld; plated over with a seam weld and the rust cut out beneath. Not known: a let-in, lapped
// or new panel whose joint isn't recorded. Everything else isn't relied on. `treated` is no repair
// of metal and comes back as not known.
// Source: UK MOT inspection manual, cars, Appendix A (continuous seam weld; spot, plug or stitch
// only where the original was spot-welded and the old panel is removed; brazing, solder, adhesive,
// fibre and filler not strong enough for load-bearing members).
Repair judge(const survey::Repair& repair, body::Role role);

// "let-in, seam-weld, 300 x 120 mm, 2021-05, now sound"; sizes in mm or inches.
std::string text_of(const survey::Repair& repair, quantity::Units units = quantity::Units::mm);

// Whether it puts new metal in place of the old: let in, lapped or a new panel.
bool renews(const survey::Repair& repair);

// A treatment that rusts again, lifts or cracks: its zone is rusted.
bool failed_treatment(const survey::Repair& repair);

}  // namespace tinworm::weighing
