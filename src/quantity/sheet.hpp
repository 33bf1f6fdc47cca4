// Sheet thickness, which may be given by gauge number and scale.
// Sources: Imperial Standard Wire Gauge, BS 3737:1964 (inch x 25.4); US Manufacturers' Standard
// Gauge for sheet steel (41.82 lb/ft2 per inch). Tolerance: EN 10131:2006 Table 1, normal,
// Re < 260 MPa, width up to 1200 mm.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "quantity/length.hpp"
#include "quantity/refusal.hpp"

namespace tinworm::quantity {

enum class GaugeScale { swg, us };

std::optional<double> sheet_gauge_mm(int gauge, GaugeScale scale);  // none where the scale lacks it

// `1.1`, `1.1 mm`, `20 SWG`, `20 US`. A bare "20 gauge" is refused, with what it could mean.
tl::expected<double, Refusal> parse_sheet_mm(std::string_view text, Units units);

// Readings as `parse_lengths_mm` takes them, or gauge numbers with one scale at the end: `18 SWG`.
tl::expected<std::vector<double>, Refusal> parse_sheets_mm(std::string_view text, Units units);

// Half-width of the normal thickness tolerance, mm; none outside 0.40 < t <= 3.00.
std::optional<double> en10131_tolerance_mm(double sheet_mm);

}  // namespace tinworm::quantity
