#include "history/place.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "history/difference.hpp"
#include "history/signs.hpp"
#include "metal/uncertainty.hpp"
#include "metal/welch.hpp"

namespace tinworm::history {
namespace {

using weighing::Span;

struct Judged {
  Change change = Change::not_comparable;
  std::size_t from = 0;
  std::string why;
  std::optional<Span> lost_mm;
  std::optional<Rate> rate;
  bool by_look = false;
};

// By what a gauge says: lost for certain, within error, or thicker than can be.
Change change_of(const Span& lost_mm) {
  if (lost_mm.low > 0) return Change::worse;
  return lost_mm.high < 0 ? Change::not_comparable : Change::same;
}

class Track {
 public:
  Track(const std::string& name, const ZoneHistory& zone, const rules::Rules& rules)
      : name_(name), zone_(zone), rules_(rules) {
    for (std::size_t i = 0; i < zone.years.size(); ++i) {
      const survey::Spot* spot = zone.years[i].recorded(name);
      readings_.push_back(spot ? reading(*spot, zone.years[i], i, rules) : std::nullopt);
    }
  }

  // What survey `to` says beside the first survey of its history, or the one before alone.
  Judged judge(std::size_t to, bool whole) const {
    const ZoneYear& now = zone_.years[to];
    if (now.facts && !now.fitted()) return {Change::not_comparable, to, "not fitted now"};
    const std::optional<std::size_t> before = recorded_before(to);
    if (!now.recorded(name_)) return gone(to, before);
    if (!before) return first_seen(to);
    if (*before < history_start(zone_.years, to))
      return {Change::repaired, *before, repairs(*before, to)};
    return side_by_side(to, whole ? first_of_history(to) : *before, whole);
  }

  const std::optional<Reading>& reading_in(std::size_t survey) const { return readings_[survey]; }

 private:
  const ZoneYear& year(std::size_t i) const { return zone_.years[i]; }
  const survey::Spot& spot(std::size_t i) const { return *zone_.years[i].recorded(name_); }

  std::optional<std::size_t> recorded_before(std::size_t to) const {
    for (std::size_t i = to; i-- > 0;)
      if (year(i).recorded(name_)) return i;
    return std::nullopt;
  }

  std::size_t first_of_history(std::size_t to) const {
    std::size_t i = history_start(zone_.years, to);
    while (!year(i).recorded(name_)) ++i;
    return i;
  }

  std::string repairs(std::size_t from, std::size_t to) const {
    std::string text;
    for (const Mended& each : zone_.mended) {
      if (each.starts <= from || each.starts > to) continue;
      text += fmt::format("{}{}", text.empty() ? "" : "; ", word(each.repair->kind));
      if (each.repair->date) text += " of " + each.repair->date->text();
    }
    return text;
  }

  Judged gone(std::size_t to, std::optional<std::size_t> before) const {
    const ZoneYear& now = year(to);
    if (!before) return {Change::not_comparable, to, "not noted until later"};
    if (!now.seen()) return {Change::no_longer_visible, *before, "the zone is not seen now"};
    if (*before < history_start(zone_.years, to))
      return {Change::repaired, *before, repairs(*before, to)};
    if (rusted(spot(*before)))
      return {Change::no_longer_visible, *before, "not noted now, though the zone was seen"};
    return {Change::not_comparable, *before, "not looked at again by that name"};
  }

  Judged first_seen(std::size_t to) const {
    const auto saw = [&](const ZoneYear& each) { return each.seen(); };
    const auto end = zone_.years.begin() + static_cast<long>(to);
    if (std::none_of(zone_.years.begin(), end, [](const ZoneYear& each) { return each.facts; }))
      return {Change::not_comparable, to, "no earlier survey has such a zone"};
    if (std::none_of(zone_.years.begin(), end, saw))
      return {Change::newly_seen, to, "the zone was not seen before"};
    return {Change::newly_seen, to,
            rusted(spot(to)) ? "not noted before, though the zone was seen" : "a new station"};
  }

  std::vector<Reading> readings(std::size_t from, std::size_t to) const {
    std::vector<Reading> found;
    for (std::size_t i = from; i <= to; ++i)
      if (readings_[i]) found.push_back(*readings_[i]);
    return found;
  }

  Judged side_by_side(std::size_t to, std::size_t from, bool whole) const {
    Judged judged{Change::not_comparable, from};
    const std::vector<Reading> read = readings(from, to);
    if (read.size() >= 2) measure(read, judged);
    const bool read_now = readings_[to].has_value() && read.size() >= 2;
    if (read_now) {
      judged.from = read.front().survey;
      judged.change = change_of(*judged.lost_mm);
      if (judged.change == Change::not_comparable) {
        judged.why = "reads thicker than it did, by more than the error";
        judged.rate.reset();
      }
    } else {
      judged.lost_mm.reset();
      judged.why = unread(to, from);
    }
    std::string sign = worse_sign(spot(from), spot(to), pit_error_mm(from, to), rules_);
    if (sign.empty() && !read_now) {
      sign = worse_look(spot(from), spot(to), rules_);
      judged.by_look = !sign.empty();
    }
    if (!sign.empty()) judged.change = Change::worse, judged.why = sign;
    if (!whole) judged.rate.reset();
    return judged;
  }

  void measure(const std::vector<Reading>& read, Judged& judged) const {
    const auto time = [&](const Reading& a, const Reading& b) {
      return between(year(a.survey).year->date(), year(b.survey).year->date());
    };
    const Reading &first = read.front(), &last = read.back(), &previous = read[read.size() - 2];
    const Span two = difference(previous, last, zone_.one_gauge, rules_).span();
    const metal::RateRange short_rate = rate_over(two, time(previous, last));
    if (read.size() == 2) {
      judged.lost_mm = two;
      judged.rate = Rate{short_rate, RateFrom::difference, {}, {}, {}};
      return;
    }
    const LineLoss line = line_loss(read, zone_.years, zone_.one_gauge, rules_);
    judged.lost_mm = line.lost_mm;
    const double long_term =
        metal::loss_rate(first.metal.mean_mm, last.metal.mean_mm, time(first, last).years);
    const bool short_governs =
        metal::governing_rate(line.per_year.value, short_rate.value).short_governs;
    judged.rate = Rate{short_governs ? short_rate : line.per_year,
                       short_governs ? RateFrom::last_two : RateFrom::line, long_term,
                       short_rate.value, line.per_year};
  }

  double pit_error_mm(std::size_t from, std::size_t to) const {
    const metal::Repeatability &a = year(from).year->gauging.pooled,
                               &b = year(to).year->gauging.pooled;
    return metal::coverage_factor(0.95, std::min(a.degrees_of_freedom, b.degrees_of_freedom)) *
           std::hypot(a.standard_mm, b.standard_mm);
  }

  std::string unread(std::size_t to, std::size_t from) const {
    if (readings_[to]) return fmt::format("not measured before {}", year(to).year->text());
    if (readings(from, to).size() > 0)
      return fmt::format("not measured in {}", year(to).year->text());
    const bool then = rusted(spot(from)), now = rusted(spot(to));
    if (then && now) return "rust then and now, never measured";
    return then ? "no rust noted now, not measured" : "no rust then or now, never measured";
  }

  const std::string& name_;
  const ZoneHistory& zone_;
  const rules::Rules& rules_;
  std::vector<std::optional<Reading>> readings_;
};

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

void name_zone(Place& place, const ZoneHistory& zone) {
  for (const ZoneYear& each : zone.years) {
    if (!each.facts) continue;
    place.zone = each.facts->number;
    place.own = each.facts->own;
  }
}

void take(Place& place, const Judged& judged) {
  place.change = judged.change;
  place.from = judged.from;
  place.why = judged.why;
  place.by_look = judged.by_look;
  place.lost_mm = judged.lost_mm;
  place.rate = judged.rate;
  if (!place.lost_mm) return;
  place.smallest_visible_mm = place.lost_mm->high - place.lost_mm->value;
  if (place.baseline_mm) place.lost_share = place.lost_mm->value / *place.baseline_mm;
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
  Place place;
  place.name = name;
  name_zone(place, zone);
  place.to = zone.years.size() - 1;
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

namespace {

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
  const auto welch = metal::welch(metal::sample_of(then), metal::sample_of(now));
  if (!welch) return std::nullopt;

  const double lost_mm = (welch->difference.low + welch->difference.high) / 2;
  const double half_mm = std::hypot(welch->difference.high - lost_mm, gauges_mm(zone, from, to));
  Judged judged{Change::same, from, "means of places that bear no common name"};
  judged.lost_mm = Span{lost_mm - half_mm, lost_mm, lost_mm + half_mm};
  judged.change = change_of(*judged.lost_mm);
  if (judged.change == Change::not_comparable) {
    judged.why = "its places read thicker than they did, by more than the error";
  } else {
    judged.rate = Rate{rate_over(*judged.lost_mm, between(zone.years[from].year->date(),
                                                          zone.years[to].year->date())),
                       RateFrom::difference,
                       {},
                       {},
                       {}};
  }
  Place place;
  place.zone_mean = true;
  name_zone(place, zone);
  place.to = to;
  for (std::size_t i = 0; i < zone.years.size(); ++i)
    place.records.push_back({.survey = i, .seen = zone.years[i].seen()});
  for (const survey::Spot& spot : zone.years[to].facts->entry->found) {
    const auto read = reading(spot, zone.years[to], to, rules);
    if (!read || !read->baseline_mm) continue;
    place.baseline_mm = read->baseline_mm;
    place.baseline_assumed = read->baseline_assumed;
  }
  take(place, judged);
  return place;
}

}  // namespace tinworm::history
