// How much of a painted surface has rusted, on two published scales. Each is computed from the
// area, never one from the other: published mappings between them disagree.
//
// Shares 0 to 1 of the surface; a share over 1 counts as 1. A share on a limit belongs to the
// better class (with 1e-9 of itself to spare for sums of areas).
#pragma once

namespace tinworm::metal {

// ISO 4628-3:2016 degree of rusting Ri 0 to 5: the first whose area isn't below the share. The
// standard's Ri 5 is 40 to 50 %; here it stands for everything over 8 %.
int iso4628_3(double share);

// ASTM D610-08 (2012) Table 1 rust grade 10 (best) to 0: the first whose upper bound isn't below
// the share.
int astm_d610(double share);

// The same between its steps, for weighing: linear in log10 of the area between upper bounds, 10 up
// to 0.01 %, 0 at 100 %. Our own interpolation; the standard has whole grades only.
double astm_d610_continuous(double share);

}  // namespace tinworm::metal
