#include "documents/since.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/parts.hpp"
#include "documents/typography.hpp"
#include "documents/zone_table.hpp"
#include "history/words.hpp"
#include "scene/change_paragraphs.hpp"
#include "scene/naming.hpp"

namespace tinworm::documents {
namespace {

using history::Comparison;
using history::Place;

std::string dates_before(const Comparison& comparison) {
  std::vector<std::string> dates;
  for (std::size_t i = 0; i + 1 < comparison.surveys.size(); ++i)
    dates.push_back(comparison.surveys[i].survey.visit.date.text());
  return fmt::format("{}", fmt::join(dates, ", "));
}

// "past the limit of 0.94 mm; to a hole: 4 to 12 years"
std::string time_left(const Place& place, quantity::Units units) {
  const std::string rate = history::rate_text(place, units);
  const std::string outlook = history::outlook_text(place, units);
  return rate + (rate.empty() || outlook.empty() ? "" : "; ") + outlook;
}

void write_worse(Flow& flow, const Comparison& comparison, quantity::Units units) {
  std::vector<Row> rows;
  for (const Place* place : comparison.by_change()) {
    if (place->change != history::Change::worse) continue;
    rows.push_back({{fmt::format("{}, {}", title_of(comparison.latest(), place->zone, place->own),
                                 history::place_title(*place)),
                     scene::capitalised(history::change_text(*place, comparison, units)),
                     scene::capitalised(time_left(*place, units))},
                    place->zone == 0 ? "" : row_place(place->zone),
                    "",
                    false});
  }
  flow.heading("Worse, the largest change first");
  if (rows.empty())
    flow.paragraph("Nothing that could be compared shows it.");
  else
    flow.table({{"place", 2}, {"what changed", 3}, {"how fast, and how long it has", 3}}, rows);
}

}  // namespace

void write_since(Flow& flow, const Comparison& comparison, quantity::Units units) {
  flow.section("What changed since", "since",
               fmt::format("Beside the surveys of {}.", dates_before(comparison)));
  write_worse(flow, comparison, units);
  for (const scene::Paragraph& each : scene::change_paragraphs(comparison, units, {})) {
    if (each.heading)
      flow.heading(each.text);
    else
      flow.paragraph(each.text, small_style);
  }
  std::string notes = history::planning_caution;
  for (const std::string& note : comparison.notes) notes += " " + note;
  flow.paragraph(notes, note_style);
}

}  // namespace tinworm::documents
