#include "output/compare_text.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "history/words.hpp"
#include "output/display_width.hpp"
#include "output/figures.hpp"
#include "output/zone_text.hpp"

namespace tinworm::output {
namespace {

using history::Change;
using history::Comparison;
using history::Place;
using history::Zone;

std::string bullet(const std::string& text, const TextStyle& style) {
  return indented(text, style.width, "  - ", "    ");
}

std::string section(const std::string& title, const std::string& lines, const TextStyle& style) {
  return lines.empty() ? "" : "\n" + heading(title, style) + "\n" + lines;
}

std::string title(const Zone& zone) {
  std::string text = zone_number(zone.number, zone.own) + " " + zone.name;
  if (zone.side != body::Side::centre) text += fmt::format(", {}", body::word(zone.side));
  return text;
}

std::string opening(const Comparison& comparison, const TextStyle& style) {
  const auto count = [&](Change change) {
    std::size_t places = 0;
    for (const Zone& zone : comparison.zones)
      for (const Place& place : zone.places) places += place.change == change ? 1 : 0;
    return places;
  };
  const auto places = [](std::size_t n) {
    return fmt::format("{} {}", n, n == 1 ? "place" : "places");
  };
  const weighing::Result &first = comparison.surveys.front(), &last = comparison.latest();
  const std::string line = fmt::format(
      "{} worse, {} repaired, {} no longer visible, {} newly seen, {} the same within error.",
      places(count(Change::worse)), count(Change::repaired), count(Change::no_longer_visible),
      count(Change::newly_seen), count(Change::same));
  return heading(line, style) + "\n" +
         indented(
             fmt::format("{}; {} surveys, {} to {}; body plan {} {}", car_text(last.survey.car),
                         comparison.surveys.size(), first.survey.visit.date.text(),
                         last.survey.visit.date.text(), last.body->name, last.body->version),
             style.width, "", "") +
         rules_block(last, style);
}

std::string surveys(const Comparison& comparison, const TextStyle& style) {
  std::vector<Row> rows;
  for (const weighing::Result& each : comparison.surveys) {
    rows.push_back({each.survey.visit.date.text(), std::string(word(each.verdict)),
                    each.could_be == each.verdict ? "" : std::string(word(each.could_be)),
                    each.main.any ? percent_text(each.main.area_share) : "", each.file,
                    each.sha256.substr(0, 12)});
  }
  return section("Surveys",
                 table({{"date"},
                        {"verdict"},
                        {"could be"},
                        {"main seen", Align::right},
                        {"file"},
                        {"fingerprint"}},
                       rows, style.width),
                 style);
}

std::string changed(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const Place* place : comparison.by_change()) {
    if (place->change != Change::worse && place->change != Change::no_longer_visible &&
        place->change != Change::repaired)
      continue;
    const std::string words = history::change_words(place->change);
    std::string text = fmt::format("{}, {}: {}", title(comparison.zone_of(*place)),
                                   history::place_title(*place), words);
    const std::string change = history::change_text(*place, comparison, style.units);
    text += change.starts_with(words) ? change.substr(words.size()) : ", " + change;
    const std::string rate = history::rate_text(*place, style.units);
    const std::string outlook = history::outlook_text(*place, style.units);
    if (place->change == Change::worse && !rate.empty()) text += "; " + rate;
    if (place->change == Change::worse && !outlook.empty()) text += "; " + outlook;
    lines += bullet(text, style);
  }
  return section("What changed, the largest change first", lines, style);
}

// Zones without a place of their own, by how they were seen; those never seen and those the same
// are told elsewhere.
std::string zones_by_sight(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const auto& [change, what] :
       {std::pair(Change::no_longer_visible, "no longer visible"),
        std::pair(Change::newly_seen, "newly seen"), std::pair(Change::repaired, "repaired"),
        std::pair(Change::not_comparable, "never seen, or not comparable")}) {
    constexpr std::size_t few = 6;
    std::vector<std::string> names;
    std::vector<int> numbers;
    for (const Zone& zone : comparison.zones) {
      if (zone.change != change || !zone.places.empty() || zone.why == "not fitted now") continue;
      names.push_back(title(zone));
      if (zone.number != 0) numbers.push_back(zone.number);
    }
    if (names.empty()) continue;
    const bool by_number = names.size() > few && numbers.size() == names.size();
    lines += bullet(
        fmt::format("{}: {}", what,
                    by_number ? zone_ranges(numbers) : fmt::format("{}", fmt::join(names, "; "))),
        style);
  }
  return section("Zones where nothing was recorded", lines, style);
}

// Every place of one change in one line a reason: "51 outer sill, left: middle, front end".
std::string together(const Comparison& comparison, Change change, const TextStyle& style) {
  std::vector<std::pair<std::string, std::vector<std::string>>> reasons;
  for (const Zone& zone : comparison.zones) {
    for (const Place& place : zone.places) {
      if (place.change != change) continue;
      const std::string why = change == Change::same ? "" : place.why;
      auto same = std::ranges::find(reasons, why, [](const auto& each) { return each.first; });
      if (same == reasons.end()) same = reasons.insert(same, {why, {}});
      const std::string entry = title(zone) + ": " + history::place_title(place);
      same->second.push_back(entry);
    }
  }
  std::string lines;
  for (const auto& [why, places] : reasons) {
    const std::string list = fmt::format("{}", fmt::join(places, "; "));
    lines += bullet(why.empty() ? list : fmt::format("{}: {}", why, list), style);
  }
  return lines;
}

std::string same(const Comparison& comparison, const TextStyle& style) {
  double least_mm = 0, most_mm = 0;
  for (const Zone& zone : comparison.zones) {
    for (const Place& place : zone.places) {
      if (place.change != Change::same || !place.smallest_visible_mm) continue;
      const double mm = *place.smallest_visible_mm;
      least_mm = least_mm == 0 ? mm : std::min(least_mm, mm);
      most_mm = std::max(most_mm, mm);
    }
  }
  const std::string lines = together(comparison, Change::same, style);
  if (lines.empty()) return "";
  const std::string least = sheet_text(least_mm, style.units),
                    most = sheet_text(most_mm, style.units);
  const std::string shows = least == most ? most : fmt::format("{} to {}", least, most);
  return section(
      fmt::format("The same within error (a loss of less than {} would not have shown)", shows),
      lines, style);
}

std::string next_survey(const Comparison& comparison, const TextStyle& style) {
  const history::NextSurvey& next = comparison.next;
  return section(
      "Next survey",
      bullet(next.date ? fmt::format("{}: {}", next.date->text(), next.why) : next.why, style),
      style);
}

std::string questions(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const history::Question& each : comparison.questions)
    lines += bullet(each.question + " " + each.why, style);
  return section("Questions", lines, style);
}

std::string not_seen(const Comparison& comparison, const TextStyle& style) {
  std::vector<int> zones;
  for (const weighing::NotSeen& each : comparison.latest().not_seen)
    if (each.zone != 0) zones.push_back(each.zone);
  if (zones.empty()) return "";
  return section(
      fmt::format("Not seen in {}, so not known", comparison.latest().survey.visit.date.text()),
      bullet("zones " + zone_ranges(zones), style), style);
}

std::string notes(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const std::string& note : comparison.notes) lines += bullet(note, style);
  return section("How it was compared", lines, style);
}

}  // namespace

std::string compare_text(const Comparison& comparison, const TextStyle& style) {
  const std::string incomparable = together(comparison, Change::not_comparable, style);
  return opening(comparison, style) + surveys(comparison, style) + changed(comparison, style) +
         section("Newly seen", together(comparison, Change::newly_seen, style), style) +
         same(comparison, style) + section("Not comparable", incomparable, style) +
         zones_by_sight(comparison, style) + not_seen(comparison, style) +
         next_survey(comparison, style) + questions(comparison, style) + notes(comparison, style) +
         "\n" + indented(history::planning_caution, style.width, "", "") +
         indented(comparison.caution, style.width, "", "");
}

}  // namespace tinworm::output
