// The diagram: every sheet of a body with what a survey found on it. Calm, exact, readable in grey;
// the worst places are named in words; what was not seen is never shown as sound; the date, the
// verdict, the limits and the caution are inside every picture.
#pragma once

#include <string>
#include <vector>

#include "quantity/length.hpp"
#include "scene/page.hpp"
#include "scene/sheet.hpp"
#include "weighing/result.hpp"

namespace tinworm::scene {

struct DiagramOptions {
  Paper paper = Paper::a4;
  bool private_too = false;  // owner, registration, chassis number and place in the strip
  bool signed_name = false;  // the surveyor's name in the strip
  quantity::Units units = quantity::Units::mm;  // of the scale bar
  bool circles =
      false;  // 30 cm round mounts that carry brakes, steering, suspension, belts, towing
  std::vector<SheetKind> sheets{SheetKind::structure, SheetKind::skin, SheetKind::frame};
};

// Structure first, then skin, then frame, each only if the body draws zones there; then, if a list
// of what was not seen finds no room beside its sheet, a page for it.
std::vector<Page> diagram(const weighing::Result& result, const DiagramOptions& options,
                          const Measure& measure);

// What every file of a picture says of itself in its metadata: car, date, verdict, what was not
// seen, the caution. Nothing private.
std::string picture_description(const weighing::Result& result);

// The radius within which load-bearing metal counts as near a mount.
// Source: UK MOT inspection manual, cars and passenger vehicles, Appendix A.
inline constexpr double near_radius_mm = 300;

}  // namespace tinworm::scene
