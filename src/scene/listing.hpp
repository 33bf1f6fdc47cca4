// What goes with a car for sale: the sheets with what a buyer asks beside them, and nothing
// private. Each page by itself says the date, how the car was looked at, the verdict, what was not
// seen, repairs, the caution.
#pragma once

#include <optional>
#include <vector>

#include "scene/diagram.hpp"

namespace tinworm::scene {

struct ListingOptions {
  Paper paper = Paper::a4;
  bool signed_name = false;                     // the surveyor's name, and any interest in the sale
  quantity::Units units = quantity::Units::mm;  // of the scale bar
  std::vector<SheetKind> sheets{SheetKind::structure, SheetKind::skin, SheetKind::frame};
};

// The sheets that the body has, no other page.
std::vector<Page> listing(const weighing::Result& result, const ListingOptions& options,
                          const Measure& measure);

// One tall column that begins with the verdict, the worst places and what was not seen. None if the
// body draws no zone on that sheet. `options.sheets` isn't asked.
std::optional<Page> listing_phone(const weighing::Result& result, SheetKind kind,
                                  const ListingOptions& options, const Measure& measure);

}  // namespace tinworm::scene
