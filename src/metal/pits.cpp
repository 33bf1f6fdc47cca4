#include "metal/pits.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <vector>

#include "metal/gumbel_table.hpp"
#include "metal/repeatability.hpp"

namespace tinworm::metal {
namespace {

constexpr double least_share_read = 0.03;
constexpr double most_patches_in_area = 500;
constexpr double on_the_limit = 1e-9;  // a size in inches changes nothing

double weighted_sum(std::span<const double> values, std::span<const double> weights) {
  return std::inner_product(values.begin(), values.end(), weights.begin(), 0.0);
}

// Scales from the likely deepest of the patches not read up to its bound.
double scales_to_bound(std::size_t patches, double unread) {
  const auto& bound = gumbel_row(patches).bound;
  const auto above = std::upper_bound(tabled_unread.begin() + 1, tabled_unread.end() - 1, unread);
  const auto next = static_cast<std::size_t>(above - tabled_unread.begin());
  const double from = std::log(tabled_unread[next - 1]), to = std::log(tabled_unread[next]);
  return std::lerp(bound[next - 1], bound[next], (std::log(unread) - from) / (to - from));
}

// Why the area can't be estimated, its maxima aside; `made` where it can.
Extrapolation extrapolation(std::size_t read, double patches_in_area) {
  const double patches = static_cast<double>(read);
  if (patches_in_area <= patches + on_the_limit) return Extrapolation::all_read;
  if (read < fewest_patches) return Extrapolation::few_patches;
  if (read > most_patches) return Extrapolation::many_patches;
  if (patches_in_area > most_patches_in_area + on_the_limit) return Extrapolation::large_area;
  if (patches / patches_in_area < least_share_read - on_the_limit)
    return Extrapolation::small_share;
  return Extrapolation::made;
}

}  // namespace

std::optional<Gumbel> fit_gumbel(std::span<const double> maxima_mm) {
  if (maxima_mm.size() < fewest_patches || maxima_mm.size() > most_patches) return std::nullopt;
  if (least(maxima_mm) == greatest(maxima_mm)) return std::nullopt;
  std::vector<double> rising(maxima_mm.begin(), maxima_mm.end());
  std::ranges::sort(rising);
  const GumbelRow& row = gumbel_row(rising.size());
  return Gumbel{weighted_sum(rising, row.location), weighted_sum(rising, row.scale)};
}

DeepestPit deepest_over(std::span<const double> maxima_mm, double area_mm2, double patch_mm2) {
  const double seen = greatest(maxima_mm), patches_in_area = area_mm2 / patch_mm2;
  const Extrapolation can_be = extrapolation(maxima_mm.size(), patches_in_area);
  if (can_be != Extrapolation::made) return {seen, seen, seen, can_be};
  const auto gumbel = fit_gumbel(maxima_mm);
  if (!gumbel) return {seen, seen, seen, Extrapolation::no_scatter};

  const double unread = std::max(1.0, patches_in_area - static_cast<double>(maxima_mm.size()));
  const double median = -std::log(std::numbers::ln2);
  const double likely = gumbel->location_mm + gumbel->scale_mm * (std::log(unread) + median);
  const double bound = likely + gumbel->scale_mm * scales_to_bound(maxima_mm.size(), unread);
  return {seen, std::max(seen, likely), std::max(seen, bound), Extrapolation::made};
}

double pit_left(double metal_mm, double pit_mm, double sheet_mm) {
  return (metal_mm - pit_mm) / sheet_mm;
}

}  // namespace tinworm::metal
