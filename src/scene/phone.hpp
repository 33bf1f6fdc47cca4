// A sheet for a telephone: one tall column, the views one below the other, numbers only where
// something was found, and all that travels with every picture: date, verdict, what wasn't seen,
// the caution.
#pragma once

#include <optional>

#include "scene/diagram.hpp"
#include "scene/page.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

// At 1080 pixels over this width the smallest letters (6.5 pt) are 28 pixels high.
constexpr double phone_width_mm = 86;

// As high as it must be. None if the body draws no zone on that sheet.
std::optional<Page> phone_page(const weighing::Result& result, SheetKind kind,
                               const DiagramOptions& options, const Measure& measure);

}  // namespace tinworm::scene
