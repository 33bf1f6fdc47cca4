// Twelve ordinary findings under a car, each with what a welder of long practice would tell its
// owner, written down before any of them was run. Where running one changed an answer, the reason
// stands beside it.
#include "weighing/judged_cases.hpp"

namespace tinworm::weighing {

// clang-format off
std::vector<JudgedCase> cases_of_a_welder() {
  return {
    {"jacking point rotten through",
     "The jack goes through it. Nothing hangs on it; don't jack there, and mend it with the sill.",
     Verdict::mend, Verdict::mend, {57}, false,
     R"(  57:
    inside: scoped
    found:
      - underside: hole 60x50, breaks, scale, 120x100
)"},
    {"front cross-member seam rusted at the control arm",
     "A rusted seam right where the control arm is bolted, not touched yet. It wants opening before "
     "it goes anywhere; if it has gone behind the seam, the arm comes off.",
     Verdict::mend, Verdict::keep_parked, {14}, false,
     R"(  14:
    inside: scoped
    found:
      - left end: at x 0 y -300 z 260, seam, 80x20
)"},
    // Was to be treated, could be mend: far from the strut, but the steering idler stands on that
    // inner wing, 19 cm away. What acid took there is to be opened before it is driven.
    {"acid under the battery tray",
     "Acid went through the tray, and the inner wing below is thin but firm, far from the strut. "
     "The tray is a bolted tray; the inner wing gets a patch once it is measured.",
     Verdict::mend, Verdict::keep_parked, {46, 15}, false,
     R"(  15:
    found:
      - bottom: hole 90x60, acid, breaks, 150x120
  46:
    found:
      - below the tray: at x 360 y 500 z 600, acid, firm, 120x80
)"},
    {"spring hanger let-in, no weld recorded",
     "Somebody let a piece into the front spring hanger; nobody wrote down how it is welded. Sound "
     "to look at. Scrape it and look at the weld before driving on.",
     Verdict::leave_alone, Verdict::keep_parked, {}, false,
     R"(  79:
    inside: scoped
    repairs:
      - let-in, 120x80, 2016, sound
)"},
    {"both inner sills soft",
     "Both inner sills give under the thumb in the middle, outers and membranes sound. Sills to be "
     "done; the car can come to me on its wheels.",
     Verdict::mend, Verdict::mend, {55, 56}, false,
     R"(  55:
    inside: scoped
    found:
      - middle: at x 1000 y -605 z 230, scale, gives, 120x60
  56:
    inside: scoped
    found:
      - middle: at x 1000 y 605 z 230, scale, gives, 120x60
)"},
    {"floor full of pinholes under wet matting",
     "The front floor is a sieve away from any mounting: a new piece of floor.",
     Verdict::mend, Verdict::mend, {65}, false,
     R"(  65:
    found:
      - footwell: at x 900 y -350 z 210, 12 holes to 6, scale, gives, 250x200
)"},
    {"outer sill holed, the rest seen and good",
     "The outer is holed in the middle, the membrane and the inner behind it scoped and clean. Mend "
     "the outer; no drama.",
     Verdict::mend, Verdict::mend, {51}, false,
     R"(  51:
    inside: scoped
    found:
      - middle: at x 1000 y -745 z 225, hole 50x30, scale, firm, 100x40
  53: {inside: scoped}
  55: {inside: scoped}
)"},
    {"damper top breaks",
     "The rear damper's mounting breaks under the screwdriver. Stays here.",
     Verdict::keep_parked, Verdict::keep_parked, {83}, false,
     R"(  83:
    inside: scoped
    found:
      - underside: scale, breaks, 80x60
)"},
    {"stone chips along the wheel arch lip",
     "Surface rust on the lip. Rub down and paint.",
     Verdict::treat, Verdict::treat, {97}, false,
     R"(  97:
    found:
      - lip: surface, firm, 300x10
)"},
    {"chassis leg pitted and measured",
     "Pitted leg, cleaned and read: 1.30 left of 1.50 or so, 13 % gone. Treat it, wax it.",
     Verdict::treat, Verdict::mend, {81}, false,
     R"(  81:
    inside: scoped
    reference: 1.50 1.51 1.49
    found:
      - underside: at x 2600 y -490 z 392, pitting, firm, metal 1.29 1.31 1.30, 150x60
)"},
    {"screen pillar blistered",
     "Bubbles under the paint at the foot of the screen frame: there is always more behind. Open it.",
     Verdict::treat, Verdict::mend, {18}, false,
     R"(  18:
    inside: scoped
    found:
      - left foot: blister, 40x30
)"},
    {"boot floor and rear leg both holed by the shackle",
     "Hole in the boot floor, and the leg under it at the shackle has gone soft. The leg first, "
     "then the floor, and it doesn't leave here till then.",
     Verdict::keep_parked, Verdict::keep_parked, {85, 26}, false,
     R"(  85:
    inside: scoped
    found:
      - shackle: scale, gives, 80x50
  26:
    found:
      - left rear: at x 3000 y -490 z 420, hole 40x40, scale, firm, 80x80
)"},
  };
}
// clang-format on

}  // namespace tinworm::weighing
