#include "history/track.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "history/difference.hpp"
#include "history/signs.hpp"
#include "metal/uncertainty.hpp"

namespace tinworm::history {

Track::Track(const std::string& name, const ZoneHistory& zone, const rules::Rules& rules)
    : name_(name), zone_(zone), rules_(rules) {
  for (std::size_t i = 0; i < zone.years.size(); ++i) {
    const survey::Spot* spot = zone.years[i].recorded(name);
    readings_.push_back(spot ? reading(*spot, zone.years[i], i, rules) : std::nullopt);
  }
}

Judged Track::judge(std::size_t to, bool whole) const {
  const ZoneYear& now = zone_.years[to];
  if (now.facts && !now.fitted()) return {Change::not_comparable, to, "not fitted now"};
  const std::optional<std::size_t> before = recorded_before(to);
  if (!now.recorded(name_)) return gone(to, before);
  if (!before) return first_seen(to);
  if (*before < history_start(zone_.years, to))
    return {Change::repaired, *before, repairs(*before, to)};
  return side_by_side(to, whole ? first_of_history(to) : *before, whole);
}

std::optional<std::size_t> Track::recorded_before(std::size_t to) const {
  for (std::size_t i = to; i-- > 0;)
    if (year(i).recorded(name_)) return i;
  return std::nullopt;
}

std::size_t Track::first_of_history(std::size_t to) const {
  std::size_t i = history_start(zone_.years, to);
  while (!year(i).recorded(name_)) ++i;
  return i;
}

std::string Track::repairs(std::size_t from, std::size_t to) const {
  std::string text;
  for (const Mended& each : zone_.mended) {
    if (each.starts <= from || each.starts > to) continue;
    text += fmt::format("{}{}", text.empty() ? "" : "; ", word(each.repair->kind));
    if (each.repair->date) text += " of " + each.repair->date->text();
  }
  return text;
}

Judged Track::gone(std::size_t to, std::optional<std::size_t> before) const {
  const ZoneYear& now = year(to);
  if (!before) return {Change::not_comparable, to, "not noted until later"};
  if (!now.seen()) return {Change::no_longer_visible, *before, "the zone is not seen now"};
  if (*before < history_start(zone_.years, to))
    return {Change::repaired, *before, repairs(*before, to)};
  if (rusted(spot(*before)))
    return {Change::no_longer_visible, *before, "not noted now, though the zone was seen"};
  return {Change::not_comparable, *before, "not looked at again by that name"};
}

Judged Track::first_seen(std::size_t to) const {
  const auto saw = [&](const ZoneYear& each) { return each.seen(); };
  const auto end = zone_.years.begin() + static_cast<long>(to);
  if (std::none_of(zone_.years.begin(), end, [](const ZoneYear& each) { return each.facts; }))
    return {Change::not_comparable, to, "no earlier survey has such a zone"};
  if (std::none_of(zone_.years.begin(), end, saw))
    return {Change::newly_seen, to, "the zone was not seen before"};
  return {Change::newly_seen, to,
          rusted(spot(to)) ? "not noted before, though the zone was seen" : "a new station"};
}

std::vector<Reading> Track::readings(std::size_t from, std::size_t to) const {
  std::vector<Reading> found;
  for (std::size_t i = from; i <= to; ++i)
    if (readings_[i]) found.push_back(*readings_[i]);
  return found;
}

Judged Track::side_by_side(std::size_t to, std::size_t from, bool whole) const {
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

void Track::measure(const std::vector<Reading>& read, Judged& judged) const {
  const auto time = [&](const Reading& a, const Reading& b) {
    return between(year(a.survey).year->date(), year(b.survey).year->date());
  };
  const Reading &first = read.front(), &last = read.back(), &previous = read[read.size() - 2];
  const weighing::Span two = difference(previous, last, zone_.one_gauge, rules_).span();
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

double Track::pit_error_mm(std::size_t from, std::size_t to) const {
  const metal::Repeatability &a = year(from).year->gauging.pooled,
                             &b = year(to).year->gauging.pooled;
  return metal::coverage_factor(0.95, std::min(a.degrees_of_freedom, b.degrees_of_freedom)) *
         std::hypot(a.standard_mm, b.standard_mm);
}

std::string Track::unread(std::size_t to, std::size_t from) const {
  if (readings_[to]) return fmt::format("not measured before {}", year(to).year->text());
  if (!readings(from, to).empty())
    return fmt::format("not measured in {}", year(to).year->text());
  const bool then = rusted(spot(from)), now = rusted(spot(to));
  if (then && now) return "rust then and now, never measured";
  return then ? "no rust noted now, not measured" : "no rust then or now, never measured";
}

}  // namespace tinworm::history
