// Findings and repairs written on one line, taken apart into the long form that says the same.
//
//   pitting, firm, dull, 180x60, metal .81 .78 .84 .80, pit .31, behind the plate, photo 14 15
//
// Parts stand between commas in any order, in any letter case. A part is known by being a word of
// its own (`pitting`, `firm`), by its first word (`metal …`, `magnet none`, `at x 1150`) or by its
// shape (`180x60`, `5 holes to 30`; in repairs also a date, and a bare number of four digits is a
// year). All else is free words, and they are the note. No damage is lost in them: a part that
// nearly is a known one, or names damage, is a problem, never a note; a remark in quotes is a note
// whatever it says, and is asked about (weighing/advice_words.cpp).
#pragma once

#include "survey/page.hpp"

namespace tinworm::survey {

// `rear end: pitting, firm` as {spot: rear end, rust: pitting, hand: firm}.
yaml::Node finding_written_long(Page& page, const yaml::Entry& line);

// `let-in, seam-weld, 300x120, 2021-05` as {kind: let-in, joint: seam-weld, …}.
yaml::Node repair_written_long(Page& page, const yaml::Node& line);
// `rear end: let-in, seam-weld` as {spot: rear end, kind: let-in, joint: seam-weld}.
yaml::Node repair_written_long(Page& page, const yaml::Entry& line);

}  // namespace tinworm::survey
