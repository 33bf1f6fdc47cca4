#include "survey/sense.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace tinworm::survey {
namespace {

constexpr double decimal_slack = 1e-9;

std::string text_of(const Size& size) {
  return fmt::format("{:.4g}x{:.4g} mm", size.along_mm, size.across_mm);
}

// Turned any way round: hole and rust are often measured the other way about.
bool fits_inside(const Size& inner, const Size& outer) {
  const auto [inner_less, inner_more] = std::minmax(inner.along_mm, inner.across_mm);
  const auto [outer_less, outer_more] = std::minmax(outer.along_mm, outer.across_mm);
  return inner_less <= outer_less + decimal_slack && inner_more <= outer_more + decimal_slack;
}

void check_zone(Page& page, const Zone& zone) {
  for (const Spot& spot : zone.found) {
    if (!spot.size || !spot.hole || fits_inside(*spot.hole, *spot.size)) continue;
    page.add({spot.place, "the hole is larger than the finding that it is part of",
              text_of(*spot.hole), fmt::format("up to its size, {}", text_of(*spot.size)),
              "a size is that of all the rust, its hole included: look at both"});
  }
}

}  // namespace

void check_sense(Page& page, const Survey& survey) {
  for (const auto& [number, zone] : survey.zones) check_zone(page, zone);
  for (const OwnZone& own : survey.own) check_zone(page, own.zone);
}

}  // namespace tinworm::survey
