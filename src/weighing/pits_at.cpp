#include "weighing/pits_at.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "metal/gumbel_table.hpp"
#include "metal/pits.hpp"
#include "metal/repeatability.hpp"
#include "weighing/step.hpp"

namespace tinworm::weighing {
namespace {

struct PitDepth {
  double likely_mm = 0;
  double bound_mm = 0;  // 97.5 % by the scatter of equal patches; else the same
};

std::string not_estimated(const std::string& why) {
  return "deepest pit of the whole place not estimated, only the deepest seen counts: " + why;
}

// What stands beside the deepest pit where equal patches were searched.
std::string pits_remark(const metal::DeepestPit& pit, std::size_t patches) {
  using enum metal::Extrapolation;
  switch (pit.extrapolation) {
    case made:
      return fmt::format(
          "deepest pit to be expected over the whole place: {:.2f} mm, at worst {:.2f} mm (97.5 % "
          "bound; extreme values of {} patches)",
          pit.likely_mm, pit.bound_mm, patches);
    case all_read:
      return "";
    case few_patches:
      return not_estimated(
          fmt::format("{} patches read, {} are needed", patches, metal::fewest_patches));
    case many_patches:
      return not_estimated(fmt::format("{} patches read, the method takes {} at most", patches,
                                       metal::most_patches));
    case no_scatter:
      return not_estimated("all patches have the same depth");
    case small_share:
      return not_estimated("under 3 % of the place was read");
    case large_area:
      return not_estimated("the place is larger than 500 patches");
  }
  return "";
}

// Deepest pit recorded; over the whole place by extreme values, where equal patches were searched.
std::optional<PitDepth> deepest_pit(const survey::Spot& spot, std::optional<double> area_mm2,
                                    MetalLeft& metal) {
  std::optional<PitDepth> deepest;
  const auto reckon = [&deepest](double likely_mm, double bound_mm) {
    const PitDepth so_far = deepest.value_or(PitDepth{});
    deepest = {std::max(so_far.likely_mm, likely_mm), std::max(so_far.bound_mm, bound_mm)};
  };
  for (const double pit : spot.pit_mm) reckon(pit, pit);
  if (!spot.pits || spot.pits->deepest_mm.empty()) return deepest;
  const std::vector<double>& maxima = spot.pits->deepest_mm;
  if (!area_mm2) {
    reckon(metal::greatest(maxima), metal::greatest(maxima));
    metal.remarks.push_back(not_estimated("the place has no size"));
    return deepest;
  }
  const double patch_mm2 = spot.pits->each.along_mm * spot.pits->each.across_mm;
  const metal::DeepestPit over_all = metal::deepest_over(maxima, *area_mm2, patch_mm2);
  reckon(over_all.likely_mm, over_all.bound_mm);
  metal.pits_over_place = over_all.extrapolation;
  const std::string remark = pits_remark(over_all, maxima.size());
  if (!remark.empty()) metal.remarks.push_back(remark);
  return deepest;
}

// The most that a place weighs beside a pit that leaves so much of its sheet.
double most_beside_pit(double pit_left, const rules::Rules& rules) {
  if (pitted_through(pit_left)) return rules.pit_through_most;
  return past_pit_limit(pit_left, rules) ? rules.pit_most : 1;
}

}  // namespace

std::optional<rules::Envelope> pits_at(const survey::Spot& spot, const ZoneBaseline& baseline,
                                       const rules::Rules& rules, std::optional<double> area_mm2,
                                       MetalLeft& metal) {
  const std::optional<PitDepth> pit = deepest_pit(spot, area_mm2, metal);
  if (!pit || baseline.from == BaselineFrom::none) return std::nullopt;
  const double sheet_mm = baseline.metal.sheet_mm;
  metal.baseline_mm = sheet_mm;
  const double metal_mm =
      metal.kind == SpanKind::interval ? metal.shown.value * sheet_mm : sheet_mm;
  metal.pit_left = metal::pit_left(metal_mm, pit->likely_mm, sheet_mm);
  metal.pit_left_low = metal::pit_left(metal_mm, pit->bound_mm, sheet_mm);
  const double likely_most = most_beside_pit(*metal.pit_left, rules);
  return rules::Envelope{most_beside_pit(*metal.pit_left_low, rules), likely_most, likely_most};
}

}  // namespace tinworm::weighing
