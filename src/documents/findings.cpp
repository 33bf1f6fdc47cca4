#include "documents/findings.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "documents/answers.hpp"
#include "documents/finding_words.hpp"
#include "documents/parts.hpp"
#include "documents/photo_strip.hpp"
#include "output/figures.hpp"
#include "scene/naming.hpp"
#include "weighing/verdict.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::documents {
namespace {

using weighing::Result;
using weighing::Spot;
using weighing::Verdict;

struct Found {
  const Spot* spot = nullptr;
  const weighing::Zone* zone = nullptr;
};

enum class Urgency { not_to_drive, to_repair, to_judge, to_treat };

Urgency urgency(const Found& found, const rules::Rules& rules) {
  const Verdict asks = level(*found.spot, *found.zone, rules).verdict;
  if (asks == Verdict::keep_parked) return Urgency::not_to_drive;
  if (asks == Verdict::mend) return Urgency::to_repair;
  const bool may_be = level_at_low(*found.spot, *found.zone, rules).verdict >= Verdict::mend;
  return may_be ? Urgency::to_judge : Urgency::to_treat;
}

std::vector<Found> with(Urgency wanted, const Result& result) {
  std::vector<Found> all;
  for (const weighing::Zone& zone : result.zones)
    for (const Spot& spot : zone.spots)
      if (spot.rank > 0 && urgency({&spot, &zone}, result.constants) == wanted)
        all.push_back({&spot, &zone});
  std::ranges::sort(all, {}, [](const Found& found) { return found.spot->rank; });
  return all;
}

// One place: its rank and words on the left, its photos on the right.
struct Entry {
  std::string number, title, judged, noted, link;
  Photos photos;
};

constexpr double number_mm = 7, between_mm = 5, after_mm = 2.6;
constexpr std::size_t photos_beside = 4;

double text_width_mm(const Entry& entry, double all_mm) {
  return (entry.photos.empty() ? all_mm : all_mm / 2 - between_mm / 2) - number_mm;
}

double height_of(std::string_view text, const Style& style, double width_mm,
                 const scene::Measure& measure) {
  return scene::line_height_mm(style) *
         static_cast<double>(scene::wrap(text, style, width_mm, measure).size());
}

double entry_height_mm(const Entry& entry, const photos::Album& album, const Flow& flow) {
  const double width = text_width_mm(entry, flow.width_mm());
  const double words = height_of(entry.title, heading_style, width, flow.measure()) +
                       height_of(entry.judged, text_style, width, flow.measure()) +
                       height_of(entry.noted, small_style, width, flow.measure());
  const double strip = strip_height_mm(entry.photos, album, flow.width_mm() / 2 - between_mm / 2);
  return std::max(words, strip) + after_mm;
}

void draw_entry(const Entry& entry, const photos::Album& album, const Flow& flow, scene::Page& page,
                const scene::Area& area) {
  scene::Layer& layer = page.layer("text");
  const double width = text_width_mm(entry, area.width_mm), x = area.x_mm + number_mm;
  scene::set_block(layer, entry.number, heading_style, {area.x_mm, area.y_mm}, number_mm,
                   flow.measure());
  double y = area.y_mm;
  const auto write = [&](const std::string& text, const Style& style) {
    y += scene::set_block(layer, text, style, {x, y}, width, flow.measure());
  };
  write(entry.title, heading_style);
  if (!entry.link.empty())
    page.links.push_back({{area.x_mm, area.y_mm, number_mm + width, y - area.y_mm}, entry.link});
  write(entry.judged, text_style);
  write(entry.noted, small_style);
  const double half = area.width_mm / 2 - between_mm / 2;
  draw_strip(page, {area.right() - half, area.y_mm + 0.6, half, area.height_mm}, entry.photos,
             album, flow.measure());
}

void write_entry(Flow& flow, const Found& found, const Result& result, const photos::Album& album,
                 quantity::Units units) {
  const Photos& photos = photos_of(result, *found.spot);
  const std::size_t beside = std::min(photos.size(), photos_beside);
  const Entry entry{fmt::format("{}", found.spot->rank), place_title(*found.zone, *found.spot),
                    place_judged(*found.spot, units),    place_noted(result, *found.spot, units),
                    on_sheet(found.zone->number),        {photos.begin(), photos.begin() + beside}};
  flow.block(entry_height_mm(entry, album, flow), [&](scene::Page& page, const scene::Area& area) {
    page.places.push_back({finding_place(*found.spot), {area.x_mm, area.y_mm}});
    draw_entry(entry, album, flow, page, area);
  });
  write_photos(flow, {photos.begin() + beside, photos.end()}, album);
}

void write_group(Flow& flow, Urgency group, const char* title, const char* meaning,
                 const Result& result, const photos::Album& album, quantity::Units units) {
  const std::vector<Found> all = with(group, result);
  if (all.empty()) return;
  flow.heading(fmt::format("{} ({})", title, all.size()), meaning);
  for (const Found& found : all) write_entry(flow, found, result, album, units);
}

std::vector<Column> to_treat_columns() {
  return {{"order", 0.65},
          {"part and place", 2.1},
          {"step", 0.9},
          {"metal left", 2.1},
          {"as found", 3}};
}

Row to_treat_row(const Found& found, const Result& result, quantity::Units units) {
  return {{fmt::format("{}", found.spot->rank),
           fmt::format("{}, {}", weighing::title(*found.zone), found.spot->name),
           scene::step_words(*found.spot), place_judged(*found.spot, units),
           place_noted(result, *found.spot, units)},
          on_sheet(found.zone->number),
          finding_place(*found.spot),
          false};
}

// A table, broken where a place has photos.
void write_to_treat(Flow& flow, const Result& result, const photos::Album& album,
                    quantity::Units units) {
  const std::vector<Found> all = with(Urgency::to_treat, result);
  if (all.empty()) return;
  flow.heading(fmt::format("To treat ({})", all.size()),
               "Rust within the limit for metal that carries, or on skin that carries nothing: "
               "clean, treat, coat and wax before it eats on.");
  std::vector<Row> rows;
  const auto write_rows = [&] {
    if (!rows.empty()) flow.table(to_treat_columns(), rows);
    rows.clear();
  };
  for (const Found& found : all) {
    if (photos_of(result, *found.spot).empty()) {
      rows.push_back(to_treat_row(found, result, units));
      continue;
    }
    write_rows();
    write_entry(flow, found, result, album, units);
  }
  write_rows();
}

}  // namespace

void write_findings(Flow& flow, const Result& result, const photos::Album& album,
                    quantity::Units units) {
  const bool none = result.ranked().empty();
  flow.section(
      "What was found, by urgency", "findings",
      none ? ""
           : "Numbers are the order of all places, 1 the worst, as on the sheets. Metal left "
             "is the likely share of the sheet with its low and high ends.");
  if (none) {
    flow.paragraph("No rust was found where looked. What wasn't seen is not known.");
    return;
  }
  write_group(flow, Urgency::not_to_drive, "Keep it parked until mended",
              "What carries brakes, steering, suspension, belts, towing or the tank, or a section "
              "that is gone.",
              result, album, units);
  write_group(flow, Urgency::to_repair, "To be mended",
              "Metal that carries, past its limit by measure or by hand, or a repair of it that "
              "can't be relied on.",
              result, album, units);
  write_group(flow, Urgency::to_judge, "May be past the limit: to measure",
              "Within the limit by the likely figure, past it by the low end of what was judged or "
              "read: nobody knows until it is cleaned and measured, or measured again.",
              result, album, units);
  write_to_treat(flow, result, album, units);
}

void write_other_photos(Flow& flow, const Result& result, const photos::Album& album) {
  bool headed = false;
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* entry = result.survey.zone(zone.number, zone.own);
    if (!entry) continue;
    Photos photos = entry->photos;
    for (const survey::Spot& spot : entry->found) {
      const bool shown = std::ranges::any_of(zone.spots, [&](const Spot& each) {
        return each.rank > 0 && !each.is_repair && &entry->found.at(each.index) == &spot;
      });
      if (!shown) photos.insert(photos.end(), spot.photos.begin(), spot.photos.end());
    }
    if (photos.empty()) continue;
    if (!headed) flow.section("Photos of parts", "photos");
    headed = true;
    flow.heading(scene::capitalised(weighing::title(zone)));
    write_photos(flow, photos, album);
  }
}

}  // namespace tinworm::documents
