// The lines of charts of metal left, and what they mean.
#pragma once

#include <vector>

#include "scene/legend.hpp"
#include "scene/palette.hpp"

namespace tinworm::scene {

inline constexpr Stroke sheet_stroke{soft_ink, 0.5, {2.2, 0.7, 0.3, 0.7}};
inline constexpr Stroke limit_stroke{ink, 0.9, {}};
inline constexpr Stroke repair_stroke{repair_ink, 0.6, {0.9, 0.7}};
inline constexpr Stroke bar_stroke{ink, 0.6, {}};
inline constexpr Stroke band_stroke{soft_ink, 0.4, {0.9, 0.7}};
inline constexpr Colour band_fill = band_grey;
constexpr double point_mm = 0.65, cap_mm = 0.7;

struct ChartParts {  // what a chart uses
  bool sheet = false, limit = false, band = false, repair = false;
  bool cut_off = false;  // its scale doesn't start at nought
};

// `limit_share`: of the sheet, that load-bearing metal must keep.
std::vector<LegendEntry> key_of(const ChartParts& used, double limit_share);

}  // namespace tinworm::scene
