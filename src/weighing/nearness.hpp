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

struct Nearness {
  Near near = Near::no;
  std::string mount;  // the nearest that counts
  double distance_mm = 0;
};

// Only mounts under the near rule (brakes, steering, suspension, belts, towing) and only main and
// local zones: those the mount stands on, and welded ones within the radius; on a separate chassis
// the radius holds for zones of the frame sheet alone. Without any coordinate: may be near, where
// the zone reaches the radius.
Nearness nearness(const survey::Position& at, const std::optional<survey::Size>& size,
                  const body::Zone& zone, const body::Plan& plan, const rules::Rules& rules);

// The mount that stands on the zone, else the nearest within whose radius it reaches; null: none.
const body::Mount* mount_on(const body::Zone& zone, const body::Plan& plan);
const body::Mount* mount_reached(const body::Zone& zone, const body::Plan& plan,
                                 const rules::Rules& rules);

}  // namespace tinworm::weighing
