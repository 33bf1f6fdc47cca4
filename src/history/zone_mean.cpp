#include "history/zone_mean.hpp"

#include <algorithm>
#include <cmath>

#include "history/difference.hpp"
#include "history/judged.hpp"
#include "metal/uncertainty.hpp"
#include "metal/welch.hpp"

namespace tinworm::history {
namespace {

using weighing::Span;

// The means of every place read in one survey.
std::vector<double> means_in(const ZoneYear& year, std::size_t survey, const rules::Rules& rules) {
  std::vector<double> means;
  if (!year.facts || !year.facts->entry) return means;
  for (const survey::Spot& spot : year.facts->entry->found)
    if (const auto read = reading(spot, year, survey, rules)) means.push_back(read->metal.mean_mm);
  return means;
}

double gauges_mm(const ZoneHistory& zone, std::size_t from, std::size_t to) {
  if (zone.one_gauge) return 0;
  return metal::coverage_factor(0.95, {}) *
         std::hypot(zone.years[from].year->gauging.gauge_standard_mm,
                    zone.years[to].year->gauging.gauge_standard_mm);
}

// Two means or more in each, by Welch's test; none where it can't tell.
std::optional<Judged> judge(const std::vector<double>& then, const std::vector<double>& now,
                            std::size_t from, const ZoneHistory& zone) {
  const auto welch = metal::welch(metal::sample_of(then), metal::sample_of(now));
  if (!welch) return std::nullopt;
  const std::size_t to = zone.years.size() - 1;
  const double lost_mm = (welch->difference.low + welch->difference.high) / 2;
  const double half_mm = std::hypot(welch->difference.high - lost_mm, gauges_mm(zone, from, to));
  Judged judged{Change::same, from, "means of places that bear no common name"};
  judged.lost_mm = Span{lost_mm - half_mm, lost_mm, lost_mm + half_mm};
  judged.change = change_of(*judged.lost_mm);
  if (judged.change == Change::not_comparable) {
    judged.why = "its places read thicker than they did, by more than the error";
    return judged;
  }
  const Between time = between(zone.years[from].year->date(), zone.years[to].year->date());
  judged.rate = Rate{rate_over(*judged.lost_mm, time), RateFrom::difference, {}, {}, {}};
  return judged;
}

}  // namespace

std::optional<Place> zone_mean_of(const ZoneHistory& zone, const std::vector<Place>& places,
                                  const rules::Rules& rules) {
  if (std::ranges::any_of(places, [](const Place& p) { return p.lost_mm.has_value(); }))
    return std::nullopt;
  const std::size_t to = zone.years.size() - 1;
  std::size_t from = history_start(zone.years, to);
  while (from < to && means_in(zone.years[from], from, rules).size() < 2) ++from;
  const std::vector<double> then = means_in(zone.years[from], from, rules),
                            now = means_in(zone.years[to], to, rules);
  if (from == to || then.size() < 2 || now.size() < 2) return std::nullopt;
  const std::optional<Judged> judged = judge(then, now, from, zone);
  if (!judged) return std::nullopt;

  Place place = place_in(zone);
  place.zone_mean = true;
  for (std::size_t i = 0; i < zone.years.size(); ++i)
    place.records.push_back({.survey = i, .seen = zone.years[i].seen()});
  for (const survey::Spot& spot : zone.years[to].facts->entry->found) {
    const auto read = reading(spot, zone.years[to], to, rules);
    if (!read || !read->baseline_mm) continue;
    place.baseline_mm = read->baseline_mm;
    place.baseline_assumed = read->baseline_assumed;
  }
  take(place, *judged);
  return place;
}

}  // namespace tinworm::history
