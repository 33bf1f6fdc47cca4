#include <fmt/format.h>

#include <algorithm>

#include "metal/film.hpp"
#include "metal/repeatability.hpp"
#include "survey/free_words.hpp"
#include "weighing/asking.hpp"
#include "weighing/gauging.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

using survey::SeenWord;

// What a word calls a coat that hides metal; "" for any other word.
std::string coat_of(const std::string& word) {
  if (word.starts_with("underseal") || word == "undercoating" || word == "bitumen")
    return "underseal";
  return word.starts_with("wax") ? "wax" : "";
}

// The coat that one clause speaks of, unless it says that it was taken off or is absent.
std::string coat_in_clause(const std::string& clause) {
  static const std::vector<std::string> gone = {"scraped", "removed", "stripped",
                                                "off",     "worn",    "gone"};
  std::string coat, before;
  for (const std::string& word : survey::words_in(clause)) {
    if (std::ranges::find(gone, word) != gone.end()) return "";
    const bool absent = before == "no" || before == "without";
    if (coat.empty() && !absent) coat = coat_of(word);
    before = word;
  }
  return coat;
}

std::string coat_named(const std::string& note) {
  for (std::size_t start = 0; start < note.size();) {
    const std::size_t end = std::min(note.find_first_of(",;:.", start), note.size());
    const std::string coat = coat_in_clause(note.substr(start, end - start));
    if (!coat.empty()) return coat;
    start = end + 1;
  }
  return "";
}

bool seen_through_coat(const Look& look) {
  return look.facts.seen.word == SeenWord::coated || look.facts.seen.word == SeenWord::part;
}

constexpr const char* why_hidden =
    "Under fresh or thick underseal or wax nothing was seen, and rust goes on below it for years.";

// The first note of the zone that speaks of such a coat.
std::string note_on_coat(const survey::Zone& entry) {
  std::vector<std::string> notes = {entry.note};
  for (const survey::Spot& spot : entry.found) notes.push_back(spot.note);
  for (const survey::Repair& repair : entry.repairs) notes.push_back(repair.note);
  const auto found = std::ranges::find_if(
      notes, [](const std::string& note) { return !coat_named(note).empty(); });
  return found == notes.end() ? "" : *found;
}

void ask_about_notes(Asking& asking) {
  bool any_coated = false;
  for (const Look& look : asking.looks) {
    if (!seen_through_coat(look)) continue;
    any_coated = true;
    const std::string note = look.facts.entry ? note_on_coat(*look.facts.entry) : "";
    if (note.empty()) continue;
    asking.of_zone(look, "fresh-coat",
                   fmt::format("{}: was metal seen there through sound paint? The note \"{}\" "
                               "speaks of {}; where that is fresh or thick, write `hidden`.",
                               title(look), note, coat_named(note)),
                   why_hidden);
  }
  for (const survey::Also& also : asking.result.survey.also) {
    const std::string& remark = coat_named(also.say).empty() ? also.what : also.say;
    if (!any_coated || coat_named(remark).empty()) continue;
    asking.of_car("fresh-coat",
                  fmt::format("which zones does \"{}\" mean? Where the {} is fresh or thick, write "
                              "`hidden`.",
                              remark, coat_named(remark)),
                  why_hidden, also.place);
  }
}

void ask_about_waxing(Asking& asking) {
  const survey::Survey& survey = asking.result.survey;
  if (!survey.kept.waxed) return;
  if (years_between(*survey.kept.waxed, survey.visit.date) > asking.rules.ask_fresh_years) return;
  Looks coated;
  for (const Look& look : asking.looks)
    if (look.facts.load_bearing() && look.facts.seen.word == SeenWord::coated)
      coated.push_back(&look);
  if (coated.empty()) return;
  asking.of_zone(*coated.front(), "fresh-coat",
                 fmt::format("waxed {}: was metal seen through the coat of {}? Where the wax is "
                             "fresh or thick, write `hidden`.",
                             survey.kept.waxed->text(), list(coated)),
                 why_hidden);
}

bool filler_likely(const Look& look, const rules::Rules& rules) {
  return look.zone->film && is_thicker(*look.zone->film, rules.film_heavy_um);
}

void ask_about_filler(Asking& asking) {
  std::vector<std::string> entries;
  const Look* first = nullptr;
  for (const Look& look : asking.looks) {
    if (!filler_likely(look, asking.rules)) continue;
    if (!first) first = &look;
    entries.push_back(fmt::format("{}, {}", title(look), greatest_text(*look.zone->film)));
  }
  if (!first) return;
  asking.of_zone(*first, "filler-likely",
                 fmt::format("what lies under the thick coat of {}? Try a magnet and a tap; with "
                             "leave, scrape a test patch.",
                             list(entries)),
                 fmt::format("Over {:.0f} um it is filler, or lead in a factory seam, rather than "
                             "paint, and may cover a repair or rust.",
                             asking.rules.film_heavy_um));
}

void ask_about_patches(Asking& asking) {
  for (const Look& look : asking.looks) {
    if (!look.zone->film || filler_likely(look, asking.rules)) continue;
    const Film& film = *look.zone->film;
    if (film.greatest_um <= asking.rules.film_repainted_um) continue;
    if (film.greatest_um < asking.rules.ask_film_patch * film.median_um) continue;
    asking.of_zone(look, "thick-patch",
                   fmt::format("{}: what is the place of {}, where half of the readings are "
                               "{:.0f} um or less? Try a magnet and a tap there.",
                               title(look), greatest_text(film), film.median_um),
                   "Filler over rust or a dent takes up a small part of a panel; lead in a "
                   "factory seam reads thick too.");
  }
}

void ask_about_unlike(Asking& asking) {
  Looks read;
  std::vector<double> medians_um;
  for (const Look& look : asking.looks) {
    if (!look.zone->film || look.zone->film->median_um <= 0) continue;
    read.push_back(&look);
    medians_um.push_back(look.zone->film->median_um);
  }
  metal::FilmOddityLimits limits;
  limits.score = asking.rules.ask_film_unlike;
  limits.least_panels = static_cast<int>(asking.rules.ask_film_zones);
  const auto oddities = metal::film_oddities(medians_um, limits);
  const double car_um = medians_um.empty() ? 0 : metal::median(medians_um);
  std::vector<std::string> entries;
  const Look* first = nullptr;
  for (std::size_t i = 0; i < oddities.size(); ++i) {
    if (!oddities[i].odd || filler_likely(*read[i], asking.rules)) continue;
    if (!first) first = read[i];
    entries.push_back(fmt::format("{}, {:.0f} um", title(*read[i]), medians_um[i]));
  }
  if (!first) return;
  asking.of_zone(*first, "film-unlike",
                 fmt::format("why is the paint of {} unlike the rest of the car, about {:.0f} um? "
                             "Look at it from behind too.",
                             list(entries), car_um),
                 "A panel painted apart was mended or changed apart.");
}

void ask_about_bare(Asking& asking) {
  Looks bare;
  for (const Look& look : asking.looks)
    if (look.zone->film && look.facts.seen.word == SeenWord::bare) bare.push_back(&look);
  if (bare.empty()) return;
  asking.of_zone(
      *bare.front(), "bare-with-film",
      fmt::format("was it bare metal, or `coated`: {}? A coat was measured there.", list(bare)),
      "Through paint a look is worth less than on bare metal.");
}

}  // namespace

void ask_about_coats(Asking& asking) {
  ask_about_notes(asking);
  ask_about_waxing(asking);
  ask_about_filler(asking);
  ask_about_patches(asking);
  ask_about_unlike(asking);
  ask_about_bare(asking);
}

}  // namespace tinworm::weighing
