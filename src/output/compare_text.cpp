#include "output/compare_text.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

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

// What makes all of it worthless stands first.
std::string doubt(const Comparison& comparison) {
  const bool asked = std::ranges::find(comparison.questions, "another-car",
                                       &history::Question::kind) != comparison.questions.end();
  return asked ? "These may be surveys of different cars: see the questions.\n" : "";
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
         doubt(comparison) + rules_block(last, style);
}

std::string verdict_word(weighing::Verdict verdict) {
  std::string text(word(verdict));
  std::ranges::replace(text, '-', ' ');
  return text;
}

std::string surveys(const Comparison& comparison, const TextStyle& style) {
  std::vector<Row> rows;
  for (const weighing::Result& each : comparison.surveys) {
    rows.push_back({each.survey.visit.date.text(), verdict_word(each.verdict),
                    each.could_be == each.verdict ? "" : verdict_word(each.could_be),
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

std::string worse(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const Place* place : comparison.by_change()) {
    if (place->change != Change::worse) continue;
    std::string text =
        fmt::format("{}, {}: {}", title(comparison.zone_of(*place)), history::place_title(*place),
                    history::change_text(*place, comparison, style.units));
    for (const std::string& more :
         {history::rate_text(*place, style.units), history::outlook_text(*place, style.units)})
      if (!more.empty()) text += "; " + more;
    lines += bullet(text, style);
  }
  return section("What got worse, the largest change first", lines, style);
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

// Every place of one change in one line a reason: "the zone is not seen now; last noted in 2017-04:
// 23 rear bulkhead (left lower corner); 27 tank mounting (strap pad)".
std::string together(const Comparison& comparison, Change change, const TextStyle& style) {
  struct Reason {
    std::string why;
    std::vector<std::pair<const Zone*, std::vector<std::string>>> zones;
  };
  std::vector<Reason> reasons;
  for (const Zone& zone : comparison.zones) {
    for (const Place& place : zone.places) {
      if (place.change != change) continue;
      const std::string why =
          change == Change::same ? "" : history::change_text(place, comparison, style.units);
      auto same = std::ranges::find(reasons, why, &Reason::why);
      if (same == reasons.end()) same = reasons.insert(same, {why, {}});
      if (same->zones.empty() || same->zones.back().first != &zone)
        same->zones.push_back({&zone, {}});
      same->zones.back().second.push_back(history::place_title(place));
    }
  }
  std::string lines;
  for (const Reason& reason : reasons) {
    std::string list;
    for (const auto& [zone, names] : reason.zones)
      list +=
          fmt::format("{}{} ({})", list.empty() ? "" : "; ", title(*zone), fmt::join(names, ", "));
    lines += bullet(reason.why.empty() ? list : fmt::format("{}: {}", reason.why, list), style);
  }
  return lines;
}

std::string same(const Comparison& comparison, const TextStyle& style) {
  const std::string least = history::least_shown_text(comparison, style.units);
  return section(least.empty()
                     ? "The same, by look"
                     : fmt::format("The same within error (a loss of less than {} would not "
                                   "have shown)",
                                   least),
                 together(comparison, Change::same, style), style);
}

std::string next_survey(const Comparison& comparison, const TextStyle& style) {
  const history::NextSurvey& next = comparison.next;
  return section(
      "Next survey",
      bullet(next.date ? fmt::format("{}: {}", next.date->text(), next.why) : next.why, style),
      style);
}

std::string sentence(std::string text) {
  if (text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string questions(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const history::Question& each : comparison.questions)
    lines += bullet(sentence(each.question) + " " + each.why, style);
  return section("Questions", lines, style);
}

std::string not_seen(const Comparison& comparison, const TextStyle& style) {
  std::vector<int> zones;
  std::vector<std::string> which;
  for (const weighing::NotSeen& each : comparison.latest().not_seen) {
    if (each.zone != 0)
      zones.push_back(each.zone);
    else
      which.push_back(zone_title(comparison.latest(), each.zone, each.own));
  }
  if (!zones.empty()) which.insert(which.begin(), "zones " + zone_ranges(zones));
  if (which.empty()) return "";
  return section(
      fmt::format("Not seen in {}, so not known", comparison.latest().survey.visit.date.text()),
      bullet(fmt::format("{}", fmt::join(which, "; ")), style), style);
}

std::string notes(const Comparison& comparison, const TextStyle& style) {
  std::string lines;
  for (const std::string& note : comparison.notes) lines += bullet(note, style);
  return section("How it was compared", lines, style);
}

}  // namespace

std::string compare_text(const Comparison& comparison, const TextStyle& style) {
  const auto all_of = [&](const std::string& heading, Change change) {
    return section(heading, together(comparison, change, style), style);
  };
  return opening(comparison, style) + surveys(comparison, style) + worse(comparison, style) +
         all_of("Repaired", Change::repaired) +
         all_of("No longer visible", Change::no_longer_visible) +
         all_of("Newly seen", Change::newly_seen) + same(comparison, style) +
         all_of("Not comparable", Change::not_comparable) + zones_by_sight(comparison, style) +
         not_seen(comparison, style) + next_survey(comparison, style) +
         questions(comparison, style) + notes(comparison, style) + "\n" +
         indented(history::planning_caution, style.width, "", "") +
         indented(comparison.caution, style.width, "", "");
}

}  // namespace tinworm::output
