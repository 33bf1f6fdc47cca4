#include "history/outlook.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "metal/corrosivity.hpp"
#include "weighing/words.hpp"

namespace tinworm::history {
namespace {

using survey::Use;

struct Keeping {
  double low_mm = 0, high_mm = 0;  // a year
  double months = 0;               // to the next survey at most
};

Keeping keeping(Use use, const rules::Rules& rules) {
  switch (use) {
    case Use::stored:
      return {rules.stored_low_mm, rules.stored_high_mm, rules.next_stored_months};
    case Use::dry_season:
      return {rules.dry_season_low_mm, rules.dry_season_high_mm, rules.next_dry_season_months};
    case Use::all_weather:
      return {rules.all_weather_low_mm, rules.all_weather_high_mm, rules.next_all_weather_months};
    case Use::salted:
      return {rules.salted_low_mm, rules.salted_high_mm, rules.next_salted_months};
  }
  return {};
}

// Age of the sheet at the latest survey: since the car was built, or the last repair.
std::optional<double> age_years(const ZoneHistory& zone) {
  const survey::Survey& latest = zone.years.back().year->survey();
  const std::size_t start = history_start(zone.years, zone.years.size() - 1);
  if (start > 0) {
    std::optional<double> age;
    for (const Mended& each : zone.mended) {
      if (each.starts != start) continue;
      if (!each.repair->date) return std::nullopt;
      age = years_between(*each.repair->date, latest.visit.date);
    }
    return age;
  }
  if (!latest.car.built) return std::nullopt;
  return years_between({*latest.car.built, 0, 0}, latest.visit.date);
}

std::optional<double> straight_line(double now_mm, double required_mm, double rate) {
  return metal::remaining_life(now_mm, required_mm, rate);
}

// The load-bearing place that runs out first, by a rate that was measured.
struct Soonest {
  const Place* place = nullptr;
  double years = 0;
};

std::optional<double> life_of(const Place& place) {
  if (!place.outlook || !place.rate || place.rate->from == RateFrom::planning) return std::nullopt;
  return place.outlook->past_limit ? place.outlook->years_to_hole_at_rate
                                   : place.outlook->years_to_limit_at_rate;
}

Soonest soonest(const Comparison& comparison) {
  Soonest first;
  for (const Zone& zone : comparison.zones) {
    if (zone.role == body::Role::skin) continue;
    for (const Place& place : zone.places) {
      const auto life = life_of(place);
      if (life && (!first.place || *life < first.years)) first = {&place, *life};
    }
  }
  return first;
}

quantity::PartialDate month_after(const quantity::PartialDate& date, int months) {
  const int from = date.year * 12 + std::max(date.month, 1) - 1;
  return {(from + months) / 12, (from + months) % 12 + 1, 0};
}

std::string place_words(const Comparison& comparison, const Place& place) {
  const Zone& zone = comparison.zone_of(place);
  const std::string side =
      zone.side == body::Side::centre ? "" : fmt::format(", {}", body::word(zone.side));
  const std::string name = place.zone_mean ? "zone mean" : place.name;
  return fmt::format("{}{} ({}), {}", zone.name, side,
                     zone.number != 0 ? fmt::format("{:02}", zone.number) : zone.own, name);
}

}  // namespace

std::optional<Rate> planning_rate(const survey::Survey& survey, const rules::Rules& rules) {
  if (!survey.kept.use) return std::nullopt;
  const Keeping kept = keeping(*survey.kept.use, rules);
  Rate rate;
  rate.per_year = {kept.low_mm, (kept.low_mm + kept.high_mm) / 2, kept.high_mm};
  rate.from = RateFrom::planning;
  return rate;
}

std::optional<Outlook> outlook_of(const Place& place, const ZoneHistory& zone,
                                  const rules::Rules& rules) {
  const auto& thickness = place.last().thickness;
  if (!thickness || !place.baseline_mm || place.baseline_assumed || !place.rate)
    return std::nullopt;
  constexpr std::array exponents{metal::steel_b1, metal::steel_b2};
  const double sheet_mm = *place.baseline_mm, now_mm = thickness->metal_mm;
  const metal::RateRange& rate = place.rate->per_year;
  Outlook outlook;
  outlook.limit_mm = rules.repair_limit * sheet_mm;
  outlook.past_limit = now_mm + 1e-9 < outlook.limit_mm;
  const std::optional<double> age = age_years(zone);
  const double loss_mm = sheet_mm - now_mm;
  outlook.years_to_limit =
      metal::life_to_loss(loss_mm, sheet_mm - outlook.limit_mm, rate, age, exponents);
  outlook.years_to_hole = metal::life_to_loss(loss_mm, sheet_mm, rate, age, exponents);
  outlook.years_to_limit_at_rate = straight_line(now_mm, outlook.limit_mm, rate.value);
  outlook.years_to_hole_at_rate = straight_line(now_mm, 0, rate.value);
  return outlook;
}

NextSurvey next_survey(const Comparison& comparison, const rules::Rules& rules) {
  const weighing::Result& latest = comparison.latest();
  if (latest.verdict == weighing::Verdict::keep_parked)
    return {{}, "after the repair: the verdict is to keep it parked until then"};
  const auto& use = latest.survey.kept.use;
  // Not told how it is kept: as if driven in all weathers.
  const double cap = keeping(use.value_or(Use::all_weather), rules).months;
  const Soonest first = soonest(comparison);
  const double half_months =
      first.place ? 12 * metal::half_life_interval(first.years, cap / 12) : cap;
  const int months = std::max(1, static_cast<int>(std::floor(half_months + 1e-9)));
  NextSurvey next{month_after(latest.survey.visit.date, months), ""};
  const std::string repair = latest.verdict == weighing::Verdict::mend
                                 ? "after the repair, and at the latest then: "
                                 : "";
  if (first.place && half_months < cap - 1e-9) {
    next.why = fmt::format("{}half the time that {} has to {} in a straight line at its rate",
                           repair, place_words(comparison, *first.place),
                           first.place->outlook->past_limit ? "a hole" : "the limit");
  } else {
    next.why = fmt::format("{}{:.0f} months, as is usual for a car {}", repair, cap,
                           !use ? "driven in all weathers (how it is kept isn't told)"
                           : *use == Use::stored      ? "stored dry"
                           : *use == Use::dry_season  ? "driven in the dry season"
                           : *use == Use::all_weather ? "driven in all weathers"
                                                      : "driven on salted roads");
  }
  return next;
}

}  // namespace tinworm::history
