#include "scene/comparison_column.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "scene/change_words.hpp"
#include "scene/column.hpp"
#include "scene/legend.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/showing_palette.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {
namespace {

using history::Change;
using history::Comparison;

constexpr Style title_style{11.5, Font::bold, black, Says::title, 1.16};
constexpr Style second_style{7.5, Font::regular, black, Says::title, 1.25};
constexpr Style plain_heading{8, Font::bold, black, Says::words, 1.3};

// The zone's pale colour and the place's strong one, where both are used.
LegendEntry showing_entry(Showing showing, bool zone, bool place) {
  LegendEntry entry{std::string(name_of(showing)), std::string(meaning_of(showing)), {}};
  const double part_mm = zone && place ? swatch_width_mm / 2 : swatch_width_mm;
  if (zone)
    entry.swatch.push_back(pale_fill(showing, {polyline(Area{0, 0, part_mm, swatch_height_mm})}));
  if (place)
    entry.swatch.push_back(strong_fill(
        showing, {polyline(Area{swatch_width_mm - part_mm, 0, part_mm, swatch_height_mm})}));
  entry.swatch.push_back(
      Shape{{polyline(Area{0, 0, swatch_width_mm, swatch_height_mm})}, {}, Stroke{ink, 0.4, {}}});
  return entry;
}

std::vector<LegendEntry> key_of(const Shown& shown, const Used& used, const rules::Rules& rules) {
  std::vector<LegendEntry> entries;
  for (const Showing showing :
       {Showing::gone, Showing::lost_much, Showing::lost_some, Showing::lost_little,
        Showing::by_sign, Showing::nothing, Showing::thicker, Showing::repaired,
        Showing::newly_seen, Showing::no_longer_visible, Showing::not_comparable,
        Showing::not_seen}) {
    const bool zone = shown.zones.contains(showing), place = shown.places.contains(showing);
    if (zone || place) entries.push_back(showing_entry(showing, zone, place));
  }
  for (LegendEntry& entry : legend_of(used, rules)) {
    if (entry.sign == KeySign::station) entry.meaning = "measured again, nothing shown";
    if (entry.sign == KeySign::rank) entry.meaning = "order of the changes, 1 the largest";
    entries.push_back(std::move(entry));
  }
  return entries;
}

void write_key(Writer& writer, const std::vector<LegendEntry>& entries, Fit fit) {
  Style style{7, Font::regular, black, Says::legend, 1.18};
  if (fit == Fit::close) style.size_pt = 6.5;
  writer.rule();
  writer.block("Key", heading_style);
  writer.y += 0.6;
  write_entries(writer, entries, style, fit == Fit::close ? 0.3 : 0.75);
  writer.y += apart_mm * 0.4;
}

void write_head(Writer& writer, const Comparison& comparison) {
  const auto date = [&](const weighing::Result& each) { return each.survey.visit.date.text(); };
  writer.block("Changed since " + date(comparison.surveys.front()).substr(0, 7), title_style);
  writer.y += 0.6;
  const weighing::Result& latest = comparison.latest();
  std::string now(weighing::sentence(latest.verdict));
  if (latest.could_be != latest.verdict)
    now += fmt::format("; could be: {}", weighing::sentence(latest.could_be));
  if (latest.open_up_first) now += "; open up first";
  writer.block(fmt::format("Then: {}. Now: {}.",
                           weighing::sentence(comparison.surveys.front().verdict), now),
               second_style);
  writer.y += apart_mm * 0.7;
}

constexpr std::size_t most_own_parts = 2;  // by name; all of them stand in the lists

// What became of whole zones, by their numbers: "Repaired: 61, 62".
std::vector<std::string> zone_lines(const Comparison& comparison) {
  std::vector<std::string> lines;
  for (const Change change : {Change::repaired, Change::newly_seen, Change::no_longer_visible}) {
    std::vector<int> numbers;
    std::vector<std::string> parts;
    for (const history::Zone& zone : comparison.zones) {
      if (zone.change != change) continue;
      if (zone.number != 0) numbers.push_back(zone.number);
      if (zone.number == 0) parts.push_back(zone_words(zone));
    }
    if (parts.size() > most_own_parts) {
      const std::size_t more = parts.size() - most_own_parts;
      parts.resize(most_own_parts);
      parts.push_back(fmt::format("{} more that the body plan lacks", more));
    }
    if (!numbers.empty()) parts.insert(parts.begin(), number_list(numbers));
    const std::string text = fmt::format("{}", fmt::join(parts, ", "));
    std::string word(history::word(change));
    std::ranges::replace(word, '-', ' ');
    if (!text.empty()) lines.push_back(fmt::format("{}: {}", capitalised(word), text));
  }
  return lines;
}

// Ranked places as on the map, then those of zones that the body doesn't draw.
std::vector<std::string> place_lines(const Comparison& comparison, const MarkedBody& body,
                                     Units units) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < body.ranked.size(); ++i) {
    const history::Place& place = *body.ranked[i];
    lines.push_back(fmt::format("{}  {} {}: {}", i + 1, place.zone, place_words(comparison, place),
                                change_words(place, units)));
  }
  for (const history::Place* place : comparison.by_change()) {
    if (place->zone != 0 || place->change != Change::worse) continue;
    lines.push_back(
        fmt::format("{}: {}", place_words(comparison, *place), change_words(*place, units)));
  }
  return lines;
}

// As many places as there is room for, the largest change first; then the zones.
void write_changes(Writer& writer, const std::vector<std::string>& places,
                   const std::vector<std::string>& zones, double most_mm) {
  writer.rule();
  writer.block("Changed most", plain_heading);
  double end = writer.y + most_mm - line_height_mm(plain_heading);
  for (const std::string& line : zones) end -= writer.height(line, list_style);
  if (places.empty()) writer.block("No place reads worse beyond the error.", list_style);
  for (std::size_t i = 0; i < places.size() && i < 9; ++i) {
    if (i >= 3 && writer.y + writer.height(places[i], list_style) > end) break;
    writer.block(places[i], list_style);
  }
  for (const std::string& line : zones) writer.block(line, list_style);
  writer.y += apart_mm * 0.4;
}

void write_next(Writer& writer, const std::string& text) {
  writer.rule();
  writer.block("Next survey", plain_heading);
  writer.block(text, list_style);
}

}  // namespace

bool draw_comparison_column(Drafting& drafting, const history::Comparison& comparison,
                            const MarkedBody& body, const Shown& shown,
                            const std::string& overflow_page) {
  const weighing::Result& latest = comparison.latest();
  Writer writer = open_column(drafting, caution_words(comparison));
  write_head(writer, comparison);
  const bool rules_overflow = write_rules(writer, latest, overflow_page);

  const auto key = key_of(shown, drafting.used, latest.constants);
  const std::string next = next_survey_words(comparison.next);
  const double next_mm =
      apart_mm * 1.1 + line_height_mm(plain_heading) + writer.height(next, list_style);
  // The next survey stands over the caution, and isn't lost where lists are long.
  Writer foot = writer;
  foot.y = writer.area.bottom() - next_mm + apart_mm * 0.4;
  write_next(foot, next);
  writer.area.height_mm -= next_mm;

  const auto key_mm = [&](Fit fit) {
    Layer tried;
    Writer trial{tried, writer.area, 0, writer.measure};
    write_key(trial, key, fit);
    return trial.y;
  };
  const auto places = place_lines(comparison, body, drafting.options.units);
  const auto zones = zone_lines(comparison);
  const double limits_mm = limits_height(writer, latest);
  double list_mm = 0;
  for (const std::string& line : places) list_mm += writer.height(line, list_style);
  for (const std::string& line : zones) list_mm += writer.height(line, list_style);
  const bool roomy = key_mm(Fit::roomy) + limits_mm + list_mm + 8 <= writer.room();
  const Fit fit = roomy ? Fit::roomy : Fit::close;
  write_changes(writer, places, zones, writer.room() - key_mm(fit) - limits_mm - 2 * apart_mm);
  write_key(writer, key, fit);
  return write_limits(writer, latest, overflow_page) || rules_overflow;
}

}  // namespace tinworm::scene
