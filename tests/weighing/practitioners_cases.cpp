// Twenty cases that a practitioner judged before any rule was written.
#include "weighing/judged_cases.hpp"

namespace tinworm::weighing {

// clang-format off
std::vector<JudgedCase> cases_of_a_practitioner() {
  return {
    {"outer sill end small",
     "One outer layer holed at its end, the two behind it measured whole: it drives to the workshop.",
     Verdict::mend, Verdict::mend, {51}, false,
     R"(  51:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: hole 25x15, scale, firm, 40x30, metal .98 .96 1.00
  53:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.06 1.07 1.05
  55:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.06 1.05 1.07
)"},
    {"three layers gone middle",
     "Nothing carries below the door: the gap moves on the lift and the shell can fold.",
     Verdict::keep_parked, Verdict::keep_parked, {51, 53, 55}, true,
     R"(  51:
    inside: scoped
    found:
      - middle: hole 250x70, breaks, crunches, 300x80
  53:
    inside: scoped
    found:
      - middle: at x 1235 z 225, hole 200x50, breaks, crunches, 260x70
  55:
    inside: scoped
    found:
      - middle: hole 180x60, breaks, crunches, 240x70
)",
     R"()",
     R"(gaps:
  - {where: left door rear edge, wheels: 5.0 mm, lift: 1.0 mm}
)"},
    {"sills pitted firm",
     "All layers measured within the limit: clean, treat, wax.",
     Verdict::treat, Verdict::treat, {51, 55}, true,
     R"(  51:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: pitting, firm, rings, 160x50, metal 1.00 .99 1.01
  53:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: surface, firm, rings, 120x40, metal 1.06 1.05 1.07
  55:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: pitting, firm, rings, 120x50, metal 1.01 1.00 1.02
)"},
    {"pinholes in hanger",
     "Pinholes in the box that the spring hangs on, and it gives: finished.",
     Verdict::keep_parked, Verdict::keep_parked, {80}, false,
     R"(  80:
    inside: scoped
    found:
      - lower edge: hole 3x3, scale, gives, dull, 60x40
)"},
    {"pinhole inner wing rail",
     "A pinhole in the top rail, far from strut and steering: weld it, no danger today.",
     Verdict::mend, Verdict::mend, {45}, false,
     R"(  45:
    found:
      - top rail rear: hole 5x5, seam, firm, 60x20
)"},
    {"hole10 in hanger",
     "A hole in the hanger itself, beside the eye: highly stressed, any hole counts.",
     Verdict::keep_parked, Verdict::keep_parked, {80}, false,
     R"(  80:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - lower edge: hole 10x8, pitting, firm, 40x30, metal 1.98 2.00 1.96
)"},
    {"hole60 far",
     "A hole at the edge of the floor, nothing hangs near it.",
     Verdict::mend, Verdict::mend, {65}, false,
     R"(  65:
    found:
      - outer edge: hole 60x50, scale, gives, 120x90
)"},
    {"hole120 near",
     "The floor corner that takes the spring eye's load is gone.",
     Verdict::keep_parked, Verdict::keep_parked, {74}, false,
     R"(  74:
    found:
      - rear corner: hole 120x80, breaks, crunches, 200x140
)"},
    {"rail holed bend",
     "The leg breaks where it bends under the toe-board, and the steering box stands on it.",
     Verdict::keep_parked, Verdict::keep_parked, {49}, false,
     R"(  49:
    inside: scoped
    found:
      - bend: hole 30x20, scale, breaks, crunches, 120x60
)"},
    {"strut top blister",
     "A blister above is a hole below until shown otherwise, and nobody felt it.",
     Verdict::mend, Verdict::keep_parked, {47}, false,
     R"(  47:
    inside: not-seen
    found:
      - plate outer edge: blister, 80x40, paint unbroken
)",
     R"(  bare: 14 16 20-23 26-28 45-46 48-86
  coated: 10-13 15 17-19 24-25 29-31 41-44 47 87-98
)",
     R"()"},
    {"crack door skin",
     "A crack in a door skin: looks and water.",
     Verdict::treat, Verdict::treat, {91}, false,
     R"(  91:
    found:
      - below the mirror: at x 800 z 800, crack 60, firm
)"},
    {"filler in sill end",
     "No magnet, thick film, dull: the metal isn't there, and the belt is near.",
     Verdict::mend, Verdict::keep_parked, {51}, false,
     R"(  51:
    inside: not-seen
    film: 180 1800 1650
    found:
      - rear end: blister, dull, magnet none, 160x80
)"},
    {"foam in sill",
     "Foam in a sill is there for a reason and holds water: open it.",
     Verdict::mend, Verdict::mend, {52}, false,
     R"(  52:
    inside: not-seen
    drains: plugged
    found:
      - middle: stuffed foam, dull, firm, 600x80
)"},
    {"sill let in good",
     "A proper let-in, measured and scoped: leave it alone.",
     Verdict::leave_alone, Verdict::leave_alone, {}, false,
     R"(  51:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.09 1.10 1.08
    repairs:
      - let-in, seam-weld, 300x120, 2021-05, cut-out, sound
)"},
    {"brazed at hanger",
     "Brass on a spring hanger carries nothing.",
     Verdict::keep_parked, Verdict::keep_parked, {79}, false,
     R"(  79:
    inside: scoped
    repairs:
      - brazed, no-weld, 80x60, 2010, unknown, sound
)"},
    {"b post foot gives",
     "The post gives where the belt bolts in.",
     Verdict::keep_parked, Verdict::keep_parked, {71}, false,
     R"(  71:
    inside: scoped
    found:
      - foot: scale, gives, dull, 100x60
)"},
    {"spare well holed",
     "The well carries only the spare wheel: weld it.",
     Verdict::mend, Verdict::mend, {28}, false,
     R"(  28:
    drains: plugged
    found:
      - bottom: hole 60x60, breaks, crunches, 160x140
)"},
    {"tank strap breaks",
     "A tank that can drop is fire on the road.",
     Verdict::keep_parked, Verdict::keep_parked, {27, 15}, false,
     R"(  15:
    found:
      - under the battery: acid, firm, 150x100
  27:
    found:
      - front strap: hole 15x10, scale, breaks, crunches, 60x40
)"},
    {"carpets glued",
     "The whole inside floor was never seen.",
     Verdict::not_known, Verdict::keep_parked, {}, false,
     R"()",
     R"(  bare: 14 16 22 26-28 45-54 57-60 63-64 71-72 75-86
  coated: 10-13 15 17-19 24-25 29-31 41-44 87-98
  hidden:
    20-21 23 55-56 61-62 65-70 73-74: carpet glued down
)",
     R"()"},
    {"near perfect",
     "Measured at every mount, scoped, whole: nothing to do.",
     Verdict::leave_alone, Verdict::leave_alone, {}, false,
     R"(  14:
    inside: scoped
    reference: 2.00 2.01 2.00
    found:
      - left end: none, firm, rings, metal 1.96 1.97 1.95
  47:
    inside: scoped
    reference: 1.00 1.01 1.00
    found:
      - plate outer edge: none, firm, rings, metal .99 .98 1.00
  48:
    inside: scoped
    reference: 1.00 1.01 1.00
    found:
      - plate outer edge: none, firm, rings, metal .99 .98 1.00
  49:
    inside: scoped
    reference: 1.60 1.61 1.60
    found:
      - bend: none, firm, rings, metal 1.57 1.58 1.56
  50:
    inside: scoped
    reference: 1.60 1.61 1.60
    found:
      - bend: none, firm, rings, metal 1.57 1.58 1.56
  51:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.08 1.09 1.07
  52:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.08 1.09 1.07
  55:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.07 1.08 1.09
  56:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: none, firm, rings, metal 1.07 1.08 1.09
  69:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - plate: none, firm, rings, metal 2.26 2.25 2.27
  70:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - plate: none, firm, rings, metal 2.26 2.25 2.27
  71:
    inside: scoped
    reference: 1.05 1.06 1.05
    found:
      - foot: none, firm, rings, metal 1.03 1.02 1.04
  72:
    inside: scoped
    reference: 1.05 1.06 1.05
    found:
      - foot: none, firm, rings, metal 1.03 1.02 1.04
  73:
    reference: 0.90 0.91 0.90
    found:
      - rear corner: none, firm, rings, metal .89 .88 .90
  74:
    reference: 0.90 0.91 0.90
    found:
      - rear corner: none, firm, rings, metal .89 .88 .90
  79:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - lower edge: none, firm, rings, metal 2.26 2.27 2.25
  80:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - lower edge: none, firm, rings, metal 2.26 2.27 2.25
  81:
    inside: scoped
    reference: 1.60 1.61 1.60
    found:
      - over the axle: none, firm, rings, metal 1.57 1.56 1.58
  82:
    inside: scoped
    reference: 1.60 1.61 1.60
    found:
      - over the axle: none, firm, rings, metal 1.57 1.56 1.58
  83:
    inside: scoped
    reference: 1.85 1.86 1.85
    found:
      - upper plate: none, firm, rings, metal 1.82 1.81 1.83
  84:
    inside: scoped
    reference: 1.85 1.86 1.85
    found:
      - upper plate: none, firm, rings, metal 1.82 1.81 1.83
  85:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - tube: none, firm, rings, metal 2.26 2.25 2.27
  86:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - tube: none, firm, rings, metal 2.26 2.25 2.27
)"},
  };
}
// clang-format on

}  // namespace tinworm::weighing
