// Where places crowd, a detail at 1:10 on a page of its own (ISO 128-3: a detail is drawn larger
// and named).
#pragma once

#include <vector>

#include "scene/diagram.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

constexpr double detail_caption_mm = 70;  // at least, over a narrow detail

// Two details at most, side by side: of the parts of views in which six places or more lie within
// 20 x 20 mm of paper, the most crowded first. Empty where nothing crowds.
std::vector<Sheet> details_of(const std::vector<Sheet>& sheets, const weighing::Result& result,
                              const DiagramOptions& options, const Measure& measure);

}  // namespace tinworm::scene
