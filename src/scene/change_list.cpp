#include "scene/change_list.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/change_words.hpp"
#include "scene/naming.hpp"
#include "scene/paper_table.hpp"
#include "scene/showing.hpp"

namespace tinworm::scene {
namespace {

using history::Change;
using history::Comparison;
using history::Zone;

std::string number_and_name(int number, const std::string& name) {
  return number == 0 ? name : fmt::format("{:02}  {}", number, name);
}

std::string link_to(int number, const std::vector<std::string>& linked) {
  const std::string name = fmt::format("zone-{:02}", number);
  return std::ranges::find(linked, name) == linked.end() ? "" : name;
}

std::string with_why(const std::string& what, const std::string& why) {
  return why.empty() || what.find(why) != std::string::npos ? what
                                                            : fmt::format("{}: {}", what, why);
}

std::string lost_words(const history::Place& place, Units units) {
  if (!place.lost_mm) return "";
  const auto& lost = *place.lost_mm;
  std::string text = fmt::format("{} ({} to {})", sheet_words(lost.value, units),
                                 sheet_figure(lost.low, units), sheet_figure(lost.high, units));
  if (place.lost_share && lost.low > 0) text += fmt::format(", {:.0f} %", 100 * *place.lost_share);
  return text;
}

TableRow row_of(const Comparison& comparison, const history::Place& place, Units units,
                const std::vector<std::string>& linked) {
  const std::string since =
      place.from < place.to ? "since " + date_words(comparison, place.from) : std::string();
  return {{number_and_name(place.zone, zone_words(comparison.zone_of(place))),
           place.zone_mean ? "mean of its readings" : place.name,
           with_why(change_words(place, units), place.why),
           since.empty() ? lost_words(place, units) : with_why(since, lost_words(place, units)),
           place.change == Change::worse ? rate_words(place, units) : "",
           place.change == Change::worse ? limit_words(place) : ""},
          link_to(place.zone, linked)};
}

// A zone that no place of it tells of.
bool tells_by_itself(const Zone& zone) {
  return zone.change != Change::same && zone.change != Change::not_comparable &&
         std::ranges::none_of(
             zone.places, [&](const history::Place& place) { return place.change == zone.change; });
}

std::vector<TableRow> changes(const Comparison& comparison, Units units,
                              const std::vector<std::string>& linked) {
  std::vector<TableRow> rows;
  const auto places = comparison.by_change();
  for (const Change change :
       {Change::worse, Change::no_longer_visible, Change::newly_seen, Change::repaired}) {
    for (const history::Place* place : places)
      if (place->change == change) rows.push_back(row_of(comparison, *place, units, linked));
    for (const Zone& zone : comparison.zones) {
      if (zone.change != change || !tells_by_itself(zone)) continue;
      std::string word(history::word(change));
      std::ranges::replace(word, '-', ' ');
      rows.push_back({{number_and_name(zone.number, zone_words(zone)), "whole zone",
                       with_why(word, zone.why), "", "", ""},
                      link_to(zone.number, linked)});
    }
  }
  return rows;
}

// "51 rear end, middle; 52 rear end".
std::string places_that_are(Change change, const Comparison& comparison) {
  std::string text;
  for (const Zone& zone : comparison.zones) {
    std::string names;
    for (const history::Place& place : zone.places) {
      if (place.change != change) continue;
      names +=
          (names.empty() ? "" : ", ") + (place.zone_mean ? "mean of its readings" : place.name);
    }
    if (names.empty()) continue;
    text += (text.empty() ? "" : "; ") +
            (zone.number == 0 ? zone_words(zone) : fmt::format("{:02}", zone.number)) + " " + names;
  }
  return text;
}

std::string zone_cell(const Comparison& comparison, const history::Question& question) {
  for (const Zone& zone : comparison.zones) {
    const bool same = question.zone != 0
                          ? zone.number == question.zone
                          : zone.number == 0 && !question.own.empty() && zone.own == question.own;
    if (same) return number_and_name(zone.number, zone_words(zone));
  }
  return "whole car";
}

std::vector<TableRow> questions(const Comparison& comparison,
                                const std::vector<std::string>& linked) {
  std::vector<TableRow> rows;
  for (const history::Question& each : comparison.questions) {
    rows.push_back({{zone_cell(comparison, each), each.spot, capitalised(each.question), each.why},
                    each.zone == 0 ? "" : link_to(each.zone, linked)});
  }
  return rows;
}

}  // namespace

std::vector<Page> change_list(const Comparison& comparison, const ComparisonOptions& options,
                              const std::vector<std::string>& linked, const Measure& measure) {
  PaperPages pages(options.paper, "Changes and questions", caution_words(comparison), measure);
  pages.heading("What changed");
  const auto rows = changes(comparison, options.units, linked);
  if (rows.empty()) pages.paragraph("Nothing beyond the error of reading.");
  if (!rows.empty())
    pages.table({{"Zone", 48},
                 {"Place", 30},
                 {"Change", 46},
                 {"Lost", 44},
                 {"Rate", 55},
                 {"To the limit, for planning", 32}},
                rows);
  if (const std::string same = places_that_are(Change::same, comparison); !same.empty())
    pages.paragraph("The same within the error of reading: " + same + ".");
  const std::string not_comparable = places_that_are(Change::not_comparable, comparison);
  if (!not_comparable.empty())
    pages.paragraph("Not comparable, as not measured twice: " + not_comparable + ".");
  if (!comparison.questions.empty()) {
    pages.heading("Questions");
    pages.table({{"Zone", 48}, {"Place", 30}, {"Ask", 100}, {"Why", 77}},
                questions(comparison, linked));
  }
  if (!comparison.notes.empty()) {
    pages.heading("Taken to be so");
    for (const std::string& note : comparison.notes) pages.paragraph(note);
  }
  return std::move(pages).pages();
}

}  // namespace tinworm::scene
