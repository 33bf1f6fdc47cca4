#include "history/questions.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <stdexcept>

#include <fmt/format.h>

#include "history/difference.hpp"
#include "history/signs.hpp"
#include "survey/free_words.hpp"
#include "weighing/advice.hpp"
#include "weighing/asking.hpp"

namespace tinworm::history {
namespace {

using Entries = std::vector<std::string>;

struct Asked {  // one question about several places
  Entries entries;
  int zone = 0;
  std::string own, spot;

  void add(const weighing::ZoneFacts& at, const std::string& name, std::string entry) {
    if (entries.empty()) zone = at.number, own = at.own, spot = name;
    entries.push_back(std::move(entry));
  }
};

std::string title(const ZoneYear& year, const std::string& name) {
  return fmt::format("{}, {}", weighing::title(*year.facts), name);
}

class Asker {
 public:
  Asker(const Comparison& comparison, const std::vector<Year>& years,
        const std::vector<ZoneHistory>& histories, const rules::Rules& rules)
      : comparison_(comparison), years_(years), histories_(histories), rules_(rules) {}

  std::vector<Question> all() {
    ask_about_thicker();
    ask_about_gauge();
    for (const ZoneHistory& zone : histories_) ask_about_late_repairs(zone);
    ask_about_thin_again();
    for (std::size_t i = 1; i < years_.size(); ++i) {
      ask_about_car(i);
      ask_about_odometer(i);
      ask_about_names(i);
      ask_about_baseline(i);
      ask_about_coat(i);
      ask_about_rust_gone(i);
      ask_about_hidden(i);
    }
    ask_about_unread();
    const auto& kinds = question_kinds();
    std::ranges::stable_sort(asked_, {}, [&](const Question& each) {
      return std::ranges::find(kinds, each.kind) - kinds.begin();
    });
    return std::move(asked_);
  }

 private:
  void ask(std::string_view kind, const Asked& about, std::string question, std::string why) {
    asked_.push_back({about.zone, about.own, about.spot, std::string(kind), std::move(question),
                      std::move(why)});
  }

  std::string date(std::size_t i) const { return years_[i].text(); }

  void ask_about_thicker() {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      for (const Place& place : places_of(zone)) {
        if (!place.lost_mm || place.lost_mm->high >= 0) continue;
        const std::string name = place.zone_mean ? "zone mean" : place.name;
        about.add(*zone.years.back().facts, place.name,
                  fmt::format("{} ({:.2f} mm more than in {})", title(zone.years.back(), name),
                              -place.lost_mm->value, date(place.from)));
      }
    }
    if (about.entries.empty()) return;
    ask("thicker-than-before", about,
        fmt::format("why does metal read thicker than before, with no repair on record: {}?",
                    weighing::list(about.entries)),
        "Metal doesn't grow: another place was read, another gauge was used, or a plate or a coat "
        "lies over it.");
  }

  void ask_about_gauge() {
    if (!histories_.front().one_gauge) return;
    const bool named = std::ranges::all_of(
        years_, [](const Year& each) { return !each.survey().gauge.name.empty(); });
    const bool measured = std::ranges::any_of(comparison_.zones, [](const Zone& zone) {
      return std::ranges::any_of(zone.places,
                                 [](const Place& place) { return place.lost_mm.has_value(); });
    });
    if (named || !measured) return;
    ask("gauge-not-named", {},
        "was it the same gauge every time? Give its `name` under `gauges: metal:` in each survey.",
        "It is taken to be the same, so that its own error cancels; between two gauges it doesn't, "
        "and small changes would not show.");
  }

  void ask_about_late_repairs(const ZoneHistory& zone) {
    for (const Mended& each : zone.mended) {
      if (!each.missed_before) continue;
      std::string missed;
      for (std::size_t i = each.starts; i < each.recorded; ++i) {
        if (!zone.years[i].seen()) continue;
        missed += (missed.empty() ? "" : " and ") + date(i);
      }
      Asked about;
      about.add(*zone.years[each.recorded].facts, "", "");
      ask("repair-found-later", about,
          fmt::format("{}: was the repair of {} ({}) there in {}? The zone was seen then and the "
                      "repair not named; it is first recorded in {}.",
                      weighing::title(*zone.years[each.recorded].facts), each.repair->date->text(),
                      word(each.repair->kind), missed, date(each.recorded)),
          "A repair that a survey passed over was well hidden, or its date is wrong.");
    }
  }

  // A repair starts a new history, and what it lost since would go unsaid.
  void ask_about_thin_again() {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      const ZoneYear& now = zone.years.back();
      if (zone.mended.empty() || !now.seen()) continue;
      for (const Place& place : places_of(zone)) {
        const Record& last = place.last();
        const bool worn = last.found && last.step >= weighing::Step::pitted &&
                          last.evidence > weighing::Evidence::looked;
        if (place.zone_mean || !worn || !last.metal_left) continue;
        if (place.change != Change::repaired) continue;
        about.add(*now.facts, place.name,
                  fmt::format("{} ({:.0f} % of the sheet left)", title(now, place.name),
                              100 * last.metal_left->value));
      }
    }
    if (about.entries.empty()) return;
    ask("thin-after-repair", about,
        fmt::format("was this part of what was mended since {}: {}?", date(0),
                    weighing::list(about.entries)),
        "If so, it thinned since; if not, the repair stopped short.");
  }

  void ask_about_car(std::size_t i) {
    if (!weighing::another_car(years_[i].survey().car, years_[i - 1].survey().car)) return;
    ask("another-car", {},
        fmt::format("is it the same car? Name, year or chassis number of {} differ from those of "
                    "{}.",
                    date(i), date(i - 1)),
        "Metal of two cars compared says nothing of either.");
  }

  void ask_about_odometer(std::size_t i) {
    const survey::Car &before = years_[i - 1].survey().car, &now = years_[i].survey().car;
    if (!before.odometer_km || !now.odometer_km || *now.odometer_km >= *before.odometer_km) return;
    ask("odometer-back", {},
        fmt::format("why did the odometer go back, from {} in {} to {} in {}?", before.odometer,
                    date(i - 1), now.odometer, date(i)),
        "A slip, another instrument, or a turned one: what the car has done is then not known.");
  }

  // Old names that no spot of the later survey has, nearly met by a name the earlier one lacks.
  void ask_about_names(std::size_t i) {
    for (const ZoneHistory& zone : histories_) {
      const ZoneYear &then = zone.years[i - 1], &now = zone.years[i];
      if (!then.facts || !then.facts->entry || !now.facts || !now.facts->entry) continue;
      Entries gone;
      for (const survey::Spot& spot : then.facts->entry->found)
        if (!now.recorded(spot.name)) gone.push_back(spot.name);
      for (const survey::Spot& spot : now.facts->entry->found) {
        if (then.recorded(spot.name)) continue;
        const std::string meant = survey::meant_name(spot.name, gone);
        if (meant.empty()) continue;
        Asked about;
        about.add(*now.facts, spot.name, "");
        ask("spot-name", about,
            fmt::format("{} in {}: is it what the survey of {} calls \"{}\"?",
                        title(now, spot.name), date(i), date(i - 1), meant),
            "Only a place of the same name is compared over the years.");
      }
    }
  }

  void ask_about_baseline(std::size_t i) {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      const auto then = sound_metal(zone.years[i - 1]), now = sound_metal(zone.years[i]);
      if (!then || !now) continue;
      const weighing::Span moved = difference(*then, *now, zone.one_gauge, rules_).span();
      if (moved.low <= 0 && moved.high >= 0) continue;
      about.add(*zone.years[i].facts, "",
                fmt::format("{} ({:.2f} mm, then {:.2f} mm)", weighing::title(*zone.years[i].facts),
                            then->metal.mean_mm, now->metal.mean_mm));
    }
    if (about.entries.empty()) return;
    ask("baseline-moved", about,
        fmt::format("was sound metal read at the same place in {} and {}: {}?", date(i - 1),
                    date(i), weighing::list(about.entries)),
        "Sound metal stays as it is; a reference that moves shifts every share of metal left.");
  }

  std::optional<Reading> sound_metal(const ZoneYear& zone) const {
    if (!zone.facts || !zone.facts->entry || zone.facts->entry->reference_mm.empty())
      return std::nullopt;
    survey::Spot sound;
    sound.metal_mm = zone.facts->entry->reference_mm;
    return reading(sound, zone, 0, rules_);
  }

  void ask_about_coat(std::size_t i) {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      const ZoneYear &then = zone.years[i - 1], &now = zone.years[i];
      if (!then.zone || !now.zone || !then.zone->film || !now.zone->film || now.repaired) continue;
      const double before_um = then.zone->film->median_um, now_um = now.zone->film->median_um;
      if (before_um <= 0 || now_um < rules_.ask_film_thicker * before_um) continue;
      about.add(*now.facts, "",
                fmt::format("{} ({:.0f} µm, then {:.0f} µm)", weighing::title(*now.facts),
                            before_um, now_um));
    }
    if (about.entries.empty()) return;
    ask("coat-thicker", about,
        fmt::format("what was put over the metal between {} and {}: {}?", date(i - 1), date(i),
                    weighing::list(about.entries)),
        "Paint, underseal or filler: a coat that has grown may cover what was there before.");
  }

  void ask_about_rust_gone(std::size_t i) {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      const ZoneYear &then = zone.years[i - 1], &now = zone.years[i];
      if (!then.facts || !then.facts->entry || !now.seen() || now.repaired || treated(now))
        continue;
      for (const survey::Spot& spot : then.facts->entry->found) {
        const survey::Spot* later = now.recorded(spot.name);
        if (rusted(spot) && (!later || !rusted(*later)))
          about.add(*now.facts, spot.name, title(now, spot.name));
      }
    }
    if (about.entries.empty()) return;
    ask("rust-gone", about,
        fmt::format("where did the rust of {} go: {}? The zone was seen in {}, and no repair is on "
                    "record.",
                    date(i - 1), weighing::list(about.entries), date(i)),
        "Rust doesn't heal: it was mended, covered, or not looked for at the same place.");
  }

  static bool treated(const ZoneYear& zone) {
    return zone.facts->entry &&
           std::ranges::any_of(zone.facts->entry->repairs, [](const survey::Repair& each) {
             return each.kind == survey::RepairKind::treated;
           });
  }

  void ask_about_hidden(std::size_t i) {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      const ZoneYear &then = zone.years[i - 1], &now = zone.years[i];
      if (!then.seen() || now.seen() || (now.facts && !now.fitted())) continue;
      about.add(*then.facts, "", weighing::title(*then.facts));
    }
    if (about.entries.empty()) return;
    ask("hidden-since", about,
        fmt::format("why was it not seen in {}, as it was in {}: {}?", date(i), date(i - 1),
                    weighing::list(about.entries)),
        "What was open once and is covered now may have been covered for a reason.");
  }

  // Read before, seen now, not read again.
  void ask_about_unread() {
    Asked about;
    for (const ZoneHistory& zone : histories_) {
      if (!zone.years.back().seen()) continue;
      for (const Place& place : places_of(zone)) {
        const bool before = std::ranges::any_of(
            place.records, [](const Record& each) { return each.thickness.has_value(); });
        if (place.zone_mean || !before || place.last().thickness) continue;
        if (place.change == Change::repaired) continue;
        about.add(*zone.years.back().facts, place.name, title(zone.years.back(), place.name));
      }
    }
    if (about.entries.empty()) return;
    ask("not-measured-again", about,
        fmt::format("can it be measured again, as before {}: {}?", date(years_.size() - 1),
                    weighing::list(about.entries)),
        "Only the same place measured twice shows how fast it rusts.");
  }

  const std::vector<Place>& places_of(const ZoneHistory& zone) const {
    return comparison_.zones[static_cast<std::size_t>(&zone - histories_.data())].places;
  }

  const Comparison& comparison_;
  const std::vector<Year>& years_;
  const std::vector<ZoneHistory>& histories_;
  const rules::Rules& rules_;
  std::vector<Question> asked_;
};

}  // namespace

const std::vector<std::string_view>& question_kinds() {
  static const std::vector<std::string_view> kinds = {
      "another-car",   "thicker-than-before", "thin-after-repair",  "rust-gone",
      "hidden-since",  "coat-thicker",        "repair-found-later", "baseline-moved",
      "odometer-back", "spot-name",           "not-measured-again", "gauge-not-named"};
  return kinds;
}

std::vector<Question> questions(const Comparison& comparison, const std::vector<Year>& years,
                                const std::vector<ZoneHistory>& histories,
                                const rules::Rules& rules) {
  return Asker(comparison, years, histories, rules).all();
}

}  // namespace tinworm::history
