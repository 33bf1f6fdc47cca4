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
      false;  // of the near radius round what carries brakes, steering, suspension, belts, towing
  bool for_sale = false;  // what a buyer asks stands beside the drawing; set by `listing` alone
  int pages_before = 0, pages_after = 0;  // of a paper that the sheets stand in
  std::vector<SheetKind> sheets{SheetKind::structure, SheetKind::skin, SheetKind::frame};
};

// Structure first, then skin, then frame, each only if the body draws zones there; then, if
// names, a list of what was not seen or of changed rules find no room beside their sheet, pages for
// them.
std::vector<Page> diagram(const weighing::Result& result, const DiagramOptions& options,
                          const Measure& measure);

// What every file of a picture says of itself in its metadata: car, date, verdict, changed
// rules, what was not seen, the caution. Nothing private.
std::string picture_description(const weighing::Result& result);

}  // namespace tinworm::scene
