#include "scene/change_list.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/change_paragraphs.hpp"
#include "scene/change_words.hpp"
#include "scene/marked_body.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/paper_table.hpp"

namespace tinworm::scene {
namespace {

using history::Change;
using history::Comparison;

std::string number_and_name(int number, const std::string& name) {
  return number == 0 ? name : fmt::format("{:02}  {}", number, name);
}

std::string worse_words(const history::Place& place, Units units) {
  const bool measured = place.lost_mm && place.lost_mm->low > 0;
  if (measured) return lost_words(place, units) + (place.why.empty() ? "" : "; " + place.why);
  return place.lost_mm ? fmt::format("{}; {}", place.why, lost_words(place, units)) : place.why;
}

std::vector<TableRow> worse(const Comparison& comparison, Units units,
                            const std::vector<std::string>& linked) {
  std::vector<TableRow> rows;
  const MarkedBody body = marked_body(comparison);  // the order that rings on the map tell
  for (const history::Place* place : comparison.by_change()) {
    if (place->change != Change::worse) continue;
    const auto ranked = std::ranges::find(body.ranked, place);
    const std::string ring =
        ranked == body.ranked.end() ? "" : fmt::format("{}", ranked - body.ranked.begin() + 1);
    rows.push_back({{ring, number_and_name(place->zone, zone_words(comparison.zone_of(*place))),
                     place->zone_mean ? "mean of its readings" : place->name,
                     place->from < place->to ? date_words(comparison, place->from) : "",
                     worse_words(*place, units), place->rate ? rate_figures(*place, units) : "",
                     place->rate ? rate_source_words(*place) : "", limit_words(*place)},
                    link_to(place->zone, linked)});
  }
  return rows;
}

void add_questions(std::vector<Paragraph>& paragraphs, const Comparison& comparison,
                   const std::vector<std::string>& linked) {
  if (comparison.questions.empty()) return;
  paragraphs.push_back({"Questions", "", true});
  for (const history::Question& each : comparison.questions)
    paragraphs.push_back({fmt::format("{} {}", capitalised(each.question), each.why),
                          each.zone == 0 ? "" : link_to(each.zone, linked)});
}

void add_notes(std::vector<Paragraph>& paragraphs, const Comparison& comparison) {
  paragraphs.push_back({"How it was compared", "", true});
  std::string text;
  for (const std::string& note : comparison.notes) text += (text.empty() ? "" : " ") + note;
  const auto places = comparison.by_change();
  const bool last_two = std::ranges::any_of(places, [](const history::Place* place) {
    return place->rate && place->rate->from == history::RateFrom::last_two;
  });
  if (last_two)
    text +=
        " Where the last two surveys show a faster loss than a line through all, theirs counts.";
  paragraphs.push_back({text});
}

}  // namespace

std::vector<Page> change_list(const Comparison& comparison, const ComparisonOptions& options,
                              const std::vector<std::string>& linked, bool with_limits,
                              const Measure& measure) {
  PaperPages pages(options.paper, "Changes and questions", caution_words(comparison), measure);
  pages.heading("What got worse");
  const auto rows = worse(comparison, options.units, linked);
  if (rows.empty()) pages.paragraph("Nothing beyond the error of reading.");
  if (!rows.empty())
    pages.table({{"Ring", 12},
                 {"Zone", 47},
                 {"Place", 29},
                 {"Since", 14},
                 {"What was lost, or seen", 55},
                 {options.units == Units::inch ? "Rate a year, thou" : "Rate a year, mm", 41},
                 {"Rate from", 39},
                 {"To the limit, for planning", 47}},
                rows);
  std::vector<Paragraph> paragraphs;
  if (with_limits) paragraphs = limit_paragraphs(comparison.latest());
  for (Paragraph& each : change_paragraphs(comparison, options.units, linked))
    paragraphs.push_back(std::move(each));
  add_questions(paragraphs, comparison, linked);
  add_notes(paragraphs, comparison);
  pages.columns(paragraphs);
  return std::move(pages).pages();
}

}  // namespace tinworm::scene
