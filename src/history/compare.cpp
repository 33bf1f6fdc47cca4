#include "history/compare.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "history/order.hpp"
#include "history/outlook.hpp"
#include "history/place.hpp"
#include "history/questions.hpp"
#include "history/zone_mean.hpp"
#include "weighing/words.hpp"

namespace tinworm::history {
namespace {

bool something_found(const ZoneYear& year) {
  return year.zone && std::ranges::any_of(year.zone->spots, &weighing::Spot::found);
}

// A zone without places: by how it was seen alone.
void judge_by_sight(Zone& zone, const ZoneHistory& history) {
  const std::vector<ZoneYear>& years = history.years;
  const ZoneYear& now = years.back();
  const bool before =
      std::any_of(years.begin(), years.end() - 1, [](const ZoneYear& each) { return each.seen(); });
  const bool mended = history_start(years, years.size() - 1) > 0;
  const bool known =
      std::any_of(years.begin(), years.end() - 1, [](const ZoneYear& each) { return each.facts; });
  if (now.facts && !now.fitted()) {
    zone.why = "not fitted now";
  } else if (!known) {
    zone.why = "no earlier survey has such a zone";
  } else if (now.seen() && mended) {
    zone.change = Change::repaired;
  } else if (now.seen()) {
    zone.change = before ? Change::same : Change::newly_seen;
    zone.why = !before ? "not seen before"
               : std::ranges::any_of(years, something_found)
                   ? "no place of it can be compared"
                   : "nothing found then or now, where looked";
  } else {
    zone.change = before ? Change::no_longer_visible : Change::not_comparable;
    zone.why = before ? "not seen now" : "never seen";
  }
}

Zone zone_of(const weighing::ZoneFacts& facts, ZoneHistory& history, const rules::Rules& rules) {
  Zone zone{facts.number, facts.own, facts.name, facts.side, facts.role};
  for (const ZoneYear& each : history.years)
    zone.steps.push_back(each.zone ? each.zone->step : weighing::Step::not_seen);
  for (const std::string& name : names_in(history.years))
    zone.places.push_back(place_of(name, history, rules));
  if (auto mean = zone_mean_of(history, zone.places, rules))
    zone.places.push_back(std::move(*mean));
  judge_by_sight(zone, history);
  for (Place& place : zone.places) {
    if (!place.rate && place.last().thickness)
      place.rate = planning_rate(history.years.back().year->survey(), rules);
    place.outlook = outlook_of(place, history, rules);
  }
  // A station that is new, or that nobody looked at again, says less than the zone as a whole.
  const auto says_less = [](const Place& place) {
    return !place.last().found &&
           (place.change == Change::newly_seen || place.change == Change::not_comparable);
  };
  for (const Place& place : zone.places) {
    if (says_less(place)) continue;
    if (zone.change != Change::same && weight(place.change) >= weight(zone.change)) continue;
    zone.change = place.change;
    zone.why.clear();
  }
  return zone;
}

void note_versions(Comparison& comparison) {
  const body::Plan& now = *comparison.latest().body;
  for (const weighing::Result& each : comparison.surveys)
    if (each.body->version != now.version)
      comparison.notes.push_back(fmt::format(
          "The survey of {} is of version {} of the body plan, that of {} of version {}: zones are "
          "matched by number and name.",
          each.survey.visit.date.text(), each.body->version,
          comparison.latest().survey.visit.date.text(), now.version));
}

void note_dates(Comparison& comparison) {
  for (const weighing::Result& each : comparison.surveys) {
    const quantity::PartialDate& date = each.survey.visit.date;
    if (date.half_width_years() > 0)
      comparison.notes.push_back(fmt::format(
          "The survey of {} doesn't tell the day: its middle is taken, and every rate widened.",
          date.text()));
  }
}

void note_gauges(Comparison& comparison, bool one_gauge) {
  bool named = true;
  for (const weighing::Result& each : comparison.surveys)
    named = named && !each.survey.gauge.name.empty();
  if (!one_gauge)
    comparison.notes.push_back(
        "The surveys were read with different gauges: each gauge's own error counts in every "
        "change.");
  else
    comparison.notes.push_back(
        named ? "All surveys were read with one gauge: its own error cancels in every change."
              : "All surveys are taken to be read with one gauge, so that its own error cancels.");
  comparison.notes.push_back(
      "The error of a change is that of the readings; a probe set down a little elsewhere than "
      "last time adds to it.");
}

}  // namespace

Comparison compare(std::vector<weighing::Result> results, const rules::Rules& rules) {
  Comparison comparison;
  sort_by_date(results);
  comparison.surveys = std::move(results);
  comparison.caution = weighing::standing_caution;
  const std::vector<Year> years = years_of(comparison.surveys, rules);
  bool one_gauge = true;
  for (const Year& each : years)
    one_gauge = one_gauge && same_gauge(each.survey().gauge, years.back().survey().gauge);

  std::vector<ZoneHistory> histories;
  for (const weighing::ZoneFacts& facts : zones_of(years)) {
    ZoneHistory history{zone_years(years, facts), {}, one_gauge};
    history.mended = mark_mended(history.years);
    comparison.zones.push_back(zone_of(facts, history, rules));
    histories.push_back(std::move(history));
  }
  note_versions(comparison);
  note_dates(comparison);
  note_gauges(comparison, one_gauge);
  comparison.questions = questions(comparison, years, histories, rules);
  comparison.next = next_survey(comparison, rules);
  return comparison;
}

}  // namespace tinworm::history
