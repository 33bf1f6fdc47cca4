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

double area_mm2(const Size& size) {
  return size.along_mm * size.across_mm;
}

// A width that nobody measured says nothing of a place's area.
void check_area_of_holes(Page& page, const Spot& spot) {
  if (!spot.size || !spot.size->across_known || spot.other_holes.empty()) return;
  double holes_mm2 = area_mm2(*spot.hole);
  for (const Size& hole : spot.other_holes) holes_mm2 += area_mm2(hole);
  if (holes_mm2 <= area_mm2(*spot.size) + decimal_slack) return;
  page.add({spot.place, "the holes together are larger than the finding that they are part of",
            fmt::format("{} holes, {:.4g} mm2", spot.other_holes.size() + 1, holes_mm2),
            fmt::format("up to its size, {}", text_of(*spot.size)),
            "a size is that of all the rust, its holes included: look at both"});
}

void check_zone(Page& page, const Zone& zone) {
  for (const Spot& spot : zone.found) {
    const bool told = std::ranges::any_of(page.problems, [&](const yaml::Problem& problem) {
      return problem.place.line == spot.place.line;  // one mistake makes one message
    });
    if (told || !spot.size || !spot.hole) continue;
    if (fits_inside(*spot.hole, *spot.size)) {
      check_area_of_holes(page, spot);
      continue;
    }
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
