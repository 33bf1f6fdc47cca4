// Where a spot lies, how near a mounting, and how much of its zone it and its like take up.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "body/plan.hpp"
#include "geometry/point.hpp"
#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

// The axis across a zone: the wider of the two extents that it doesn't run along.
body::Axis across_axis(const body::Zone& zone);

geometry::Interval extent(const geometry::Box3& box, body::Axis axis);
std::optional<double> coordinate(const survey::Position& at, body::Axis axis);

// The spot's rectangle in space: first figure of its size along the zone's `runs`, second across;
// a coordinate nobody recorded runs over the zone's extent.
geometry::Box3 place_of(const survey::Position& at, const std::optional<survey::Size>& size,
                        const body::Zone& zone);

// Whether the two coordinates that a place needs are known.
bool is_placed(const survey::Position& at);

struct Nearness {
  Bearing sure;    // near: no where nothing is sure
  Bearing may_be;  // at worst, if the place lies where it may; never less than `sure`
  // From a tank's strap that stands on the zone: for certain, and where it may be nearest.
  std::optional<double> tank_mm, may_tank_mm;

  Near near() const;  // maybe where it may be worse than is sure and nothing is sure
};

// Mounts that count: a zone that they stand on is fitted.
std::vector<const body::Mount*> mounts_that_count(const survey::Survey& survey);

// Only mounts under the near rule (brakes, steering, suspension, belts, towing) and only main and
// local zones within the radius: `on` a part that a mount stands on, `into` a part welded to one,
// near it for other welded ones; on a separate chassis the last holds for zones of the frame sheet
// alone. A place needs two coordinates; with fewer it may be wherever its zone is, and is sure only
// on a mount's own part that lies within the radius as a whole. Which mount bears: the worst row of
// the table of places (verdict.hpp), then the nearest, then the first.
// The radius: UK MOT inspection manual, cars, Appendix A section 2 (30 cm of a mounting). On and
// into: common practice, following the load.
Nearness nearness(const survey::Position& at, const std::optional<survey::Size>& size,
                  const body::Zone& zone, const std::vector<const body::Mount*>& mounts,
                  const body::Plan& plan, const rules::Rules& rules);

// Of a repair whose place isn't recorded: it lies on its whole zone, on the mount that stands there
// at no distance.
Nearness nearness_of_whole(const body::Zone& zone, const std::vector<const body::Mount*>& mounts,
                           const body::Plan& plan, const rules::Rules& rules);

// As it concerns the verdict: how bad a row of the table of places is; greater is worse.
int row_of(const Bearing& bearing, const rules::Rules& rules);

// The mount under the near rule that stands on the zone, else one that it takes the load of, else
// the nearest within whose radius it reaches.
Bearing reached(const body::Zone& zone, const std::vector<const body::Mount*>& mounts,
                const body::Plan& plan, const rules::Rules& rules);

}  // namespace tinworm::weighing
