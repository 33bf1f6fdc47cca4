#include "history/signs.hpp"

#include <algorithm>

#include "survey/signs.hpp"
#include "weighing/metal_at.hpp"

namespace tinworm::history {
namespace {

using survey::Spot;

bool grew(const std::optional<survey::Size>& then, const std::optional<survey::Size>& now,
          double grown) {
  if (!then || !now) return false;
  // A width that only one of them knows tells no growth: then the lengths do.
  const bool widths = then->across_known && now->across_known;
  const auto extent = [&](const survey::Size& size) {
    return size.along_mm * (widths ? size.across_mm : 1);
  };
  return extent(*now) >= grown * extent(*then);
}

double deepest_mm(const Spot& spot) {
  double deepest = 0;
  for (const double pit : spot.pit_mm) deepest = std::max(deepest, pit);
  if (spot.pits)
    for (const double pit : spot.pits->deepest_mm) deepest = std::max(deepest, pit);
  return deepest;
}

std::optional<survey::Size> hole_size(const Spot& spot) {
  return spot.hole ? spot.hole : spot.size;
}

std::size_t holes(const Spot& spot) {
  return 1 + spot.other_holes.size();
}

}  // namespace

std::string worse_sign(const Spot& then, const Spot& now, double pit_error_mm,
                       const rules::Rules& rules) {
  if (holed(now)) {
    if (!holed(then)) return "holed since";
    if (holes(now) > holes(then)) return "more holes since";
    return grew(hole_size(then), hole_size(now), rules.grown) ? "the hole has grown" : "";
  }
  if (breaks(now) && !breaks(then) && !holed(then)) return "breaks under hand or probe since";
  if (gives(now) && !gives(then) && !breaks(then) && !holed(then))
    return "gives under hand or tap since";
  if (now.crack_mm && !then.crack_mm) return "cracked since";
  if (now.crack_mm && *now.crack_mm >= rules.grown * *then.crack_mm) return "the crack has grown";
  const double before_mm = deepest_mm(then), now_mm = deepest_mm(now);
  if (before_mm > 0 && now_mm > before_mm + pit_error_mm) return "pitted deeper";
  return "";
}

std::string worse_look(const Spot& then, const Spot& now, const rules::Rules& rules) {
  if (rusted(now) && !rusted(then)) return "rust where there was none";
  if (rusted(now) && grew(then.size, now.size, rules.grown)) return "the rust has spread";
  return "";
}

bool rusted(const Spot& spot) {
  return weighing::has_sign_of_rust(spot);
}

}  // namespace tinworm::history
