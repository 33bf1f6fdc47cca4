// What is cut out of one part: places joined to rectangles, with a margin, to the edge where it is
// near; and what needs no cut, a pinhole or a crack alone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rates/rates.hpp"
#include "survey/survey.hpp"
#include "weighing/zone_facts.hpp"
#include "work/plan.hpp"

namespace tinworm::work {

struct Place {
  std::string name;
  survey::Position at;
  std::optional<survey::Size> size;  // none: taken as the `unsized` square
  bool certain = true;               // measured, felt, holed, or a repair that can't be relied on
  bool holed = false;                // not by a pinhole
  double pinhole_mm = 0;             // one pinhole and nothing else: across
  double crack_mm = 0;               // a crack in metal that is within the limit: its length
};

// A place whose middle is near the part's edge is moved onto the part. Places nearer than `join`,
// edge to edge, are one cut, their rectangle; so are those it comes near in turn. Then the margin
// on each side; a side that comes within `to-outline` of the part's extent, or over it, goes to it.
// A place of which a coordinate isn't known is a cut of its own, no longer or wider than the part.
// A sill holed near an end is cut whole, and an arch lip past the limit along most of its length.
// Joined by likely sizes, so that the three figures of a range are of the same cuts.
//
// A pinhole alone is welded up: its own size, and only at worst a piece with its margin. A crack
// alone is welded, on load-bearing metal under a plate that covers it with its margin. With another
// place within `join` either is part of the cut.
//
// A larger place never makes a smaller cut, but two cuts that become one may need less weld than
// both.
std::vector<Cut> cuts(const std::vector<Place>& places, const weighing::ZoneFacts& zone,
                      const rates::Rates& rates);

Range weld_mm(
    const Cut& cut);  // all round the piece; of a crack its length too; of a pinhole round it
Range sheet_mm2(const Cut& cut);  // new metal; none for a piece that goes back in

}  // namespace tinworm::work
