// The range of every number a body plan may hold: outside it a figure is a slip of pen or unit.
// Common practice: wide enough for any car. How much a plan may hold keeps reading it quick.
#pragma once

#include <cstddef>

namespace tinworm::body {

struct Range {
  double low = 0, high = 0;
};

constexpr int format_version = 1;
constexpr int highest_version = 9999;        // of a plan
constexpr Range size_range_mm{300, 10'000};  // of the whole body
constexpr Range sheet_range_mm{0.3, 10};
constexpr double farthest_mm = 10'000;  // from the front axle; no car reaches so far
constexpr double largest_area_m2 = 20;  // of a zone

constexpr std::size_t most_points_of_path = 5'000;
constexpr std::size_t most_points_of_plan = 200'000;
constexpr std::size_t most_boxes = 100;
constexpr std::size_t most_points_of_box = 60;

}  // namespace tinworm::body
