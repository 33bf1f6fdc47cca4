#include "history/year.hpp"

#include <algorithm>
#include <cmath>

namespace tinworm::history {

using survey::Coating;

std::vector<Year> years_of(const std::vector<weighing::Result>& results,
                           const rules::Rules& rules) {
  std::vector<Year> years;
  for (const weighing::Result& each : results)
    years.push_back(
        {&each, weighing::zone_facts(each.survey), weighing::gauging(each.survey, rules)});
  return years;
}

bool same_gauge(const survey::MetalGauge& a, const survey::MetalGauge& b) {
  if ((a.coating == Coating::compensated) != (b.coating == Coating::compensated)) return false;
  if (!a.name.empty() && !b.name.empty()) return a.name == b.name;
  return a.uncertainty_mm == b.uncertainty_mm;
}

namespace {

template <class Spots>
auto* named(const Spots& spots, const std::string& name) {
  const auto found = std::ranges::find_if(spots, [&](const auto& s) { return s.name == name; });
  return found == spots.end() ? nullptr : &*found;
}

bool same_part(const weighing::ZoneFacts& a, const weighing::ZoneFacts& b) {
  return a.number == b.number && a.own == b.own && a.name == b.name;
}

}  // namespace

const survey::Spot* ZoneYear::recorded(const std::string& name) const {
  return facts && facts->entry ? named(facts->entry->found, name) : nullptr;
}

const weighing::Spot* ZoneYear::weighed(const std::string& name) const {
  const survey::Spot* spot = recorded(name);
  if (!spot) return nullptr;
  return &zone->spots[static_cast<std::size_t>(spot - facts->entry->found.data())];
}

std::vector<ZoneYear> zone_years(const std::vector<Year>& years, const weighing::ZoneFacts& zone) {
  std::vector<ZoneYear> all;
  for (const Year& year : years) {
    ZoneYear in{&year};
    for (std::size_t i = 0; i < year.facts.size(); ++i) {
      if (!same_part(year.facts[i], zone)) continue;
      in.facts = &year.facts[i];
      in.zone = &year.result->zones[i];
    }
    all.push_back(in);
  }
  return all;
}

std::vector<weighing::ZoneFacts> zones_of(const std::vector<Year>& years) {
  std::vector<weighing::ZoneFacts> zones = years.back().facts;
  for (auto year = years.rbegin() + 1; year != years.rend(); ++year)
    for (const weighing::ZoneFacts& zone : year->facts)
      if (!zone.own.empty() &&
          std::ranges::none_of(zones, [&](const auto& known) { return same_part(zone, known); }))
        zones.push_back(zone);
  return zones;
}

double Reading::standard_mm() const {
  return std::hypot(metal.repeatability.standard_mm / std::sqrt(metal.count), metal.coating_mm);
}

std::optional<Reading> reading(const survey::Spot& spot, const ZoneYear& zone, std::size_t survey,
                               const rules::Rules& rules) {
  if (spot.metal_mm.empty()) return std::nullopt;
  const Year& year = *zone.year;
  const weighing::Coating coat =
      weighing::coating(year.survey(), zone.facts->entry, spot.coating, rules);
  if (coat.upper_bound) return std::nullopt;
  const weighing::ZoneBaseline base =
      weighing::baseline(*zone.facts, year.survey(), year.gauging, rules);
  const bool has_base = base.from != weighing::BaselineFrom::none;
  std::vector<double> kept;
  for (const double t : spot.metal_mm)
    if (!has_base || t - coat.subtract_mm <= rules.too_thick * base.metal.sheet_mm + 1e-9)
      kept.push_back(t);
  if (kept.empty()) return std::nullopt;
  Reading in{
      survey, weighing::measured(kept, coat, year.gauging), year.gauging.gauge_standard_mm, {}};
  if (has_base) in.baseline_mm = base.metal.sheet_mm;
  in.baseline_assumed = base.from == weighing::BaselineFrom::plan_sheet;
  return in;
}

}  // namespace tinworm::history
