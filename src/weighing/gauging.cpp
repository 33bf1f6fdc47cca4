#include "weighing/gauging.hpp"

#include <algorithm>

#include "metal/echo.hpp"

namespace tinworm::weighing {
namespace {

using Sets = std::vector<std::vector<double>>;

void gather(const survey::Zone& zone, Sets& sets) {
  if (!zone.reference_mm.empty()) sets.push_back(zone.reference_mm);
  for (const survey::Spot& spot : zone.found)
    if (!spot.metal_mm.empty()) sets.push_back(spot.metal_mm);
  for (const survey::Repair& repair : zone.repairs)
    if (!repair.metal_mm.empty()) sets.push_back(repair.metal_mm);
}

// What the sheet of a zone is before anything is measured: the survey's word, else the plan's.
double stated_mm(const body::Zone& zone, const survey::Survey& survey) {
  const auto entry = survey.zones.find(zone.number);
  if (entry != survey.zones.end() && entry->second.sheet_mm) return *entry->second.sheet_mm;
  return zone.sheet_mm;
}

const survey::Zone* pair_entry(const ZoneFacts& zone, const survey::Survey& survey) {
  if (!zone.plan || !zone.plan->pair()) return nullptr;
  const body::Zone* twin = survey.body->zone(*zone.plan->pair());
  const auto entry = survey.zones.find(*zone.plan->pair());
  if (!twin || entry == survey.zones.end() || entry->second.reference_mm.empty()) return nullptr;
  return stated_mm(*zone.plan, survey) == stated_mm(*twin, survey) ? &entry->second : nullptr;
}

}  // namespace

Gauging gauging(const survey::Survey& survey, const rules::Rules& rules) {
  Gauging result;
  result.prior = {rules.prior_scatter_mm, rules.prior_degrees, rules.scatter_limit_mm};
  result.gauge_assumed = !survey.gauge.uncertainty_mm;
  result.gauge_standard_mm = survey.gauge.uncertainty_mm.value_or(rules.gauge_uncertainty_mm);
  Sets sets;
  for (const ZoneFacts& zone : zone_facts(survey))
    if (zone.entry) gather(*zone.entry, sets);
  result.pooled = metal::pooled(sets, result.prior);
  return result;
}

bool is_thicker(const Film& film, double limit_um) {
  return film.off_scale || film.greatest_um > limit_um;
}

Coating coating(const survey::Survey& survey, const survey::Zone* entry,
                std::optional<survey::Coating> told, const rules::Rules& rules) {
  if (told.value_or(survey.gauge.coating) != survey::Coating::left_on) return {};
  if (!entry || entry->film_off_scale) return {.upper_bound = true};
  const auto echo =
      metal::echo_correction(entry->film_um, {rules.echo_factor, rules.film_prior_share,
                                              rules.film_prior_degrees, rules.echo_film_limit_um});
  if (!echo) return {.upper_bound = true};
  return {echo->subtract_mm, echo->standard_mm, echo->degrees_of_freedom, false};
}

bool has_upper_bound(const survey::Survey& survey, const survey::Zone& entry,
                     const rules::Rules& rules) {
  const auto bounded = [&](const std::vector<double>& readings_mm,
                           std::optional<survey::Coating> told) {
    return !readings_mm.empty() && coating(survey, &entry, told, rules).upper_bound;
  };
  return bounded(entry.reference_mm, entry.reference_coating) ||
         std::ranges::any_of(entry.found, [&](const survey::Spot& spot) {
           return bounded(spot.metal_mm, spot.coating);
         });
}

metal::Measured measured(std::span<const double> readings_mm, const Coating& coating,
                         const Gauging& gauging) {
  return {metal::mean(readings_mm) - coating.subtract_mm, static_cast<int>(readings_mm.size()),
          metal::repeatability_of(readings_mm, gauging.pooled, gauging.prior), coating.standard_mm,
          coating.degrees_of_freedom};
}

ZoneBaseline baseline(const ZoneFacts& zone, const survey::Survey& survey, const Gauging& gauging,
                      const rules::Rules& rules) {
  const auto usable = [&](const survey::Zone* entry) {
    if (!entry || entry->reference_mm.empty()) return false;
    const Coating coat = coating(survey, entry, entry->reference_coating, rules);
    return !coat.upper_bound && metal::mean(entry->reference_mm) > coat.subtract_mm;
  };
  const auto sound_metal = [&](const survey::Zone& entry) {
    return measured(entry.reference_mm, coating(survey, &entry, entry.reference_coating, rules),
                    gauging);
  };
  if (usable(zone.entry))
    return {BaselineFrom::reference, metal::reference(sound_metal(*zone.entry))};
  if (const survey::Zone* twin = pair_entry(zone, survey); usable(twin))
    return {BaselineFrom::pair_reference,
            metal::pair_reference(sound_metal(*twin), rules.pair_half_share)};
  if (zone.entry && zone.entry->sheet_mm)
    return {BaselineFrom::survey_sheet,
            metal::stated_sheet(*zone.entry->sheet_mm, rules.survey_sheet_half_share)};
  if (zone.plan)
    return {BaselineFrom::plan_sheet,
            metal::stated_sheet(zone.plan->sheet_mm, rules.plan_sheet_half_share)};
  return {};
}

}  // namespace tinworm::weighing
