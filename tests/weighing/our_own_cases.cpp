// Forty cases of our own, each answered before it was run. Where running one changed an answer, the
// reason stands beside it.
#include "weighing/judged_cases.hpp"

namespace tinworm::weighing {

// clang-format off
std::vector<JudgedCase> cases_of_our_own() {
  return {
    {"pinhole in the shackle tube",
     "A pinhole beside the shackle, in the tube that it turns in: any hole there counts.",
     Verdict::keep_parked, Verdict::keep_parked, {85}, false,
     R"(  85:
    inside: scoped
    found:
      - tube: hole 4x4, pitting, firm, 30x20
)"},
    {"leg holed over the axle",
     "The leg is holed where the bump stop strikes it.",
     Verdict::keep_parked, Verdict::keep_parked, {81}, false,
     R"(  81:
    inside: scoped
    found:
      - over the axle: hole 30x20, scale, firm, 60x40
)"},
    {"rear floor gives, far from the belt",
     "Floor that gives 25 cm from the belt plate: structural, drives to the workshop.",
     Verdict::mend, Verdict::mend, {73}, false,
     R"(  73:
    found:
      - spot a: at x 1300 y -400 z 215, scale, gives, 60x40
)"},
    {"rear floor gives beside the belt plate",
     "The plate pulls on floor that gives.",
     Verdict::keep_parked, Verdict::keep_parked, {73}, false,
     R"(  73:
    found:
      - spot a: at x 1600 y -330 z 215, scale, gives, 80x60
)"},
    {"small hole in the boot floor corner",
     "A small hole in firm floor, a hand away from the shackle: weld it.",
     Verdict::mend, Verdict::mend, {26}, false,
     R"(  26:
    found:
      - left corner: hole 15x15, scale, firm, 40x40
)"},
    {"leg cracked at the steering box",
     "A crack beside the steering box grows with every lock.",
     Verdict::keep_parked, Verdict::keep_parked, {49}, false,
     R"(  49:
    inside: scoped
    found:
      - spot a: at x 200 y -400 z 420, crack 40, firm
)"},
    {"heel board cracked in the middle",
     "A crack far from the spring: find its cause, weld it.",
     Verdict::mend, Verdict::mend, {21}, false,
     R"(  21:
    found:
      - spot a: at x 1940 y 0 z 300, crack 30, firm
)"},
    {"brazed patch in the front floor",
     "Brass carries nothing, but nothing hangs on this floor.",
     Verdict::mend, Verdict::mend, {65}, false,
     R"(  65:
    repairs:
      - brazed, no-weld, 200x100, 2010, unknown, sound
)"},
    {"plate over the spring hanger",
     "A plate on the hanger and nobody knows what is under it.",
     Verdict::keep_parked, Verdict::keep_parked, {79}, false,
     R"(  79:
    inside: scoped
    repairs:
      - plated-over, seam-weld, 100x80, 2012, unknown, sound
)"},
    {"door skin holed at the hem",
     "Looks and water.",
     Verdict::treat, Verdict::treat, {91}, false,
     R"(  91:
    found:
      - bottom hem front: hole 40x20
)"},
    {"wing bottom gone",
     "A bolted wing: looks and water; what is behind it was seen.",
     Verdict::treat, Verdict::treat, {41}, false,
     R"(  41:
    found:
      - rear bottom: hole 80x60, breaks, 120x80
)"},
    {"tank mounting pitted, firm",
     "Firm under the thumb, but how deep the pits are nobody measured.",
     Verdict::treat, Verdict::mend, {27}, false,
     R"(  27:
    found:
      - front strap: pitting, firm, 60x40
)"},
    {"tank mounting cracked",
     "A cracked tank mounting lets the tank drop.",
     Verdict::keep_parked, Verdict::keep_parked, {27}, false,
     R"(  27:
    found:
      - rear strap: crack 20
)"},
    {"roof gutter holed",
     "A welded panel that stiffens the shell: to be mended, no danger today.",
     Verdict::mend, Verdict::mend, {19}, false,
     R"(  19:
    found:
      - left gutter: hole 30x10, scale, 60x20
)"},
    {"scuttle end rotten",
     "Structural, and nothing hangs on it.",
     Verdict::mend, Verdict::mend, {17}, false,
     R"(  17:
    inside: scoped
    found:
      - left end: hole 40x30, breaks, 80x60
)"},
    {"seam at the A-post foot, not felt",
     "Only looked at; no belt on it: clean it, it could need metal.",
     Verdict::treat, Verdict::mend, {59}, false,
     R"(  59:
    inside: scoped
    found:
      - foot: seam, 120x20
)"},
    {"seam at the B-post foot, not felt",
     "A rusted seam under the belt is new metal until felt.",
     Verdict::mend, Verdict::keep_parked, {71}, false,
     R"(  71:
    inside: scoped
    found:
      - foot: seam, 120x20
)"},
    {"strut top sounds dull",
     "Dull over the strut: something is behind it.",
     Verdict::mend, Verdict::keep_parked, {47}, false,
     R"(  47:
    inside: scoped
    found:
      - plate outer edge: surface, dull, 60x40
)"},
    {"hanger with surface rust, firm",
     "A bloom of rust on firm thick metal: clean and coat.",
     Verdict::treat, Verdict::treat, {79}, false,
     R"(  79:
    inside: scoped
    found:
      - lower edge: surface, firm, 60x40
)"},
    {"hanger scaled, not measured",
     "Scale on a hanger is metal lost, and nobody knows how much.",
     Verdict::mend, Verdict::keep_parked, {79}, false,
     R"(  79:
    inside: scoped
    found:
      - lower edge: scale, firm, 60x40
)"},
    {"hanger measured at 80 %",
     "Past the limit and measured: structural work, it still carries.",
     Verdict::mend, Verdict::mend, {79}, false,
     R"(  79:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - lower edge: scale, firm, 60x40, metal 1.84 1.86 1.82
)"},
    {"hanger measured at 44 %",
     "Half the metal under a spring is gone.",
     Verdict::keep_parked, Verdict::keep_parked, {79}, false,
     R"(  79:
    inside: scoped
    reference: 2.30 2.31 2.30
    found:
      - lower edge: scale, firm, 60x40, metal 1.00 1.04 1.02
)"},
    {"inner sill end, small hole",
     "One wall, a small hole in firm metal: weld it.",
     Verdict::mend, Verdict::mend, {55}, false,
     R"(  55:
    inside: scoped
    reference: 1.10 1.11 1.10
    found:
      - rear end: hole 20x15, scale, firm, 50x40, metal 1.00 .98 1.02
)"},
    {"inner sill end breaks, the rest whole",
     "One wall of three near the spring; the other two carry: to the workshop.",
     Verdict::mend, Verdict::mend, {55}, false,
     R"(  55:
    inside: scoped
    found:
      - rear end: hole 60x50, breaks, 80x60
)"},
    {"two layers of the sill gone",
     "Outer sill and membrane gone side by side: a third of the sill is missing.",
     Verdict::keep_parked, Verdict::keep_parked, {51, 53}, false,
     R"(  51:
    inside: scoped
    found:
      - middle: hole 300x120, breaks, 320x130
  53:
    inside: scoped
    found:
      - spot a: at x 1235 z 260, hole 250x100, breaks, 260x110
)"},
    {"outer sill gone, the rest whole",
     "One layer of three: structural, drives to the workshop.",
     Verdict::mend, Verdict::mend, {51}, false,
     R"(  51:
    inside: scoped
    found:
      - middle: hole 300x120, breaks, 320x130
)"},
    {"leg gives at the subframe bolt",
     "The axle pulls on metal that gives.",
     Verdict::keep_parked, Verdict::keep_parked, {49}, false,
     R"(  49:
    inside: scoped
    found:
      - spot a: at x 0 y -432 z 420, scale, gives, 150x80
)"},
    {"mesh at the B-post foot",
     "Mesh and filler where a belt bolts in: nothing is there until shown.",
     Verdict::mend, Verdict::keep_parked, {71}, false,
     R"(  71:
    inside: scoped
    found:
      - foot: stuffed mesh, magnet none, 120x80
)"},
    {"foam in the spring hanger",
     "Foam in the box that the spring hangs on.",
     Verdict::mend, Verdict::keep_parked, {79}, false,
     R"(  79:
    inside: scoped
    found:
      - lower edge: stuffed foam, 60x60
)"},
    {"weak magnet on the sill",
     "Filler in the middle of a sill: likely new metal, nothing hangs near.",
     Verdict::mend, Verdict::mend, {51}, false,
     R"(  51:
    inside: scoped
    found:
      - middle: blister, magnet weak, 100x60
)"},
    {"thick film on the toe-board",
     "Nothing found, but nobody knows what is under such a coat.",
     Verdict::leave_alone, Verdict::mend, {}, false,
     R"(  61:
    film: 1400
)"},
    {"thick film on a hanger",
     "Scoped and clean inside, but a coat like filler on the spring's box.",
     Verdict::leave_alone, Verdict::keep_parked, {}, false,
     R"(  79:
    inside: scoped
    film: 1300
)"},
    {"gap moves, sills sound",
     "Something bends: look again at the sill, though nothing was found.",
     Verdict::leave_alone, Verdict::mend, {}, false,
     R"()",
     R"()",
     R"(gaps:
  - {where: left door rear edge, wheels: 5.0 mm, lift: 1.0 mm}
)"},
    {"inner wings under underseal",
     "Nothing found, but the steering stands on metal that nobody felt.",
     Verdict::not_known, Verdict::keep_parked, {}, false,
     R"()",
     R"(  bare: 14 16 20-23 26-28 47-86
  coated: 10-13 15 17-19 24-25 29-31 41-46 87-98
)",
     R"()"},
    {"inner wings under underseal, felt firm",
     "The same, felt firm under the thumb.",
     Verdict::leave_alone, Verdict::leave_alone, {}, false,
     R"(  45:
    found:
      - front lower seam: none, firm
  46:
    found:
      - front lower seam: none, firm
)",
     R"(  bare: 14 16 20-23 26-28 47-86
  coated: 10-13 15 17-19 24-25 29-31 41-46 87-98
)",
     R"()"},
    {"new sill of thinner sheet",
     "A sound let-in of thinner sheet than the old: no rot in it.",
     Verdict::leave_alone, Verdict::leave_alone, {}, false,
     R"(  51:
    inside: scoped
    found:
      - rear end: none, firm, rings, metal .88 .90 .89
    repairs:
      - let-in, seam-weld, 300x120, 2021-05, cut-out, sound
)"},
    {"four pinholes together",
     "Four pinholes side by side are a hole.",
     Verdict::mend, Verdict::mend, {65}, false,
     R"(  65:
    found:
      - outer edge: hole 4 4 4 4, scale, firm, 80x40
)"},
    {"pinhole at the sill end",
     "A pinhole in firm metal, well away from the belt.",
     Verdict::mend, Verdict::mend, {51}, false,
     R"(  51:
    inside: scoped
    found:
      - rear end: hole 3x3, surface, firm, 30x20
)"},
    {"tunnel gives at the handbrake",
     "The handbrake pulls on metal that gives.",
     Verdict::keep_parked, Verdict::keep_parked, {20}, false,
     R"(  20:
    found:
      - spot a: at x 1450 y 30 z 340, scale, gives, 60x50
)"},
    {"treated leg rusts again",
     "A treatment that didn't hold: do it again.",
     Verdict::treat, Verdict::treat, {49}, false,
     R"(  49:
    inside: scoped
    repairs:
      - treated, 2015, rusting
)"},
  };
}
// clang-format on

}  // namespace tinworm::weighing
