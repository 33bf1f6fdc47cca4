#include <fmt/format.h>

#include <algorithm>

#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

using survey::Beneath;
using survey::RepairKind;

bool carries(const Mend& mend) {
  return mend.look->facts.load_bearing() && mend.recorded->kind != RepairKind::treated;
}

bool joint_unknown(const Mend& mend) {
  return carries(mend) && !mend.judged->reliable;
}

bool taken_as_sound(const Mend& mend) {
  return carries(mend) && mend.judged->reliable == true && mend.judged->now_assumed;
}

// Rust left beneath, or nobody knows, and no reading in the zone to go by.
bool rests_on_unknown(const Mend& mend) {
  const survey::Repair& repair = *mend.recorded;
  const bool unknown =
      repair.beneath ? *repair.beneath != Beneath::cut_out : repair.kind == RepairKind::plated_over;
  return carries(mend) && unknown && !mend.look->zone->measured;
}

// Readings on its own metal, and nothing to hold them against.
bool sheet_unknown(const Mend& mend) {
  return carries(mend) && !mend.recorded->metal_mm.empty() && !mend.recorded->sheet_mm;
}

bool undated(const Mend& mend) {
  return !mend.recorded->date;
}

void ask_of(Asking& asking, bool (*holds)(const Mend&), std::string_view kind,
            std::string_view question, const char* why) {
  Mends mends;
  for (const Mend& mend : asking.mends)
    if (holds(mend)) mends.push_back(&mend);
  if (mends.empty()) return;
  asking.of_repair(*mends.front(), kind,
                   fmt::format(fmt::runtime(question), is_it(mends.size()), list(mends)), why);
}

}  // namespace

void ask_about_repairs(Asking& asking) {
  ask_of(asking, joint_unknown, "repair-joint", "how {} joined: {}?",
         "A seam weld all round can be relied on and tacks can't; an unknown joint leaves the "
         "repair unknown.");
  ask_of(asking, rests_on_unknown, "repair-beneath",
         "can the metal be measured round {1}? Rust may go on beneath.",
         "A patch hides the metal that has to carry it.");
  ask_of(asking, taken_as_sound, "repair-now", "{} sound now: {}? The survey doesn't say so.",
         "A repair is relied on only while it is sound.");
  ask_of(asking, sheet_unknown, "repair-sheet",
         "of what sheet {}: {}? Its readings are held against nothing.",
         "A repair is measured against its own sheet, never against that of the part round it.");
  ask_of(asking, undated, "repair-undated", "how old {}: {}?",
         "A repair begins a history of its own; without its date nobody can tell how fast it "
         "rusts.");
}

}  // namespace tinworm::weighing
