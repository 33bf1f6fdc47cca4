#include "history/place.hpp"

#include <algorithm>

#include "history/difference.hpp"
#include "history/judged.hpp"
#include "history/track.hpp"

namespace tinworm::history {
namespace {

Record record_of(const ZoneYear& year, std::size_t survey, const std::string& name,
                 const std::optional<Reading>& reading) {
  Record record;
  record.survey = survey;
  record.seen = year.seen();
  record.repaired = year.repaired;
  const weighing::Spot* spot = year.weighed(name);
  if (!spot) return record;
  record.recorded = true;
  record.found = spot->found;
  if (reading) record.thickness = thickness(*reading);
  record.metal_left = spot->metal.weighed;
  record.kind = spot->metal.kind;
  record.step = spot->step;
  record.evidence = spot->evidence;
  return record;
}

}  // namespace

std::vector<std::string> names_in(const std::vector<ZoneYear>& zone) {
  std::vector<std::string> names;
  for (auto year = zone.rbegin(); year != zone.rend(); ++year) {
    if (!year->facts || !year->facts->entry) continue;
    for (const survey::Spot& spot : year->facts->entry->found)
      if (std::ranges::find(names, spot.name) == names.end()) names.push_back(spot.name);
  }
  return names;
}

Place place_of(const std::string& name, const ZoneHistory& zone, const rules::Rules& rules) {
  const Track track(name, zone, rules);
  Place place = place_in(zone);
  place.name = name;
  bool begun = false;
  for (std::size_t i = 0; i < zone.years.size(); ++i) {
    place.records.push_back(record_of(zone.years[i], i, name, track.reading_in(i)));
    if (begun) place.records.back().change = track.judge(i, false).change;
    begun = begun || place.records.back().recorded;
    if (!track.reading_in(i) || !track.reading_in(i)->baseline_mm) continue;
    place.baseline_mm = track.reading_in(i)->baseline_mm;
    place.baseline_assumed = track.reading_in(i)->baseline_assumed;
  }
  take(place, track.judge(place.to, true));
  return place;
}

}  // namespace tinworm::history
