#include "documents/mendings.hpp"

#include <fmt/format.h>

#include "documents/finding_words.hpp"
#include "documents/photo_strip.hpp"
#include "scene/naming.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::documents {
namespace {

std::string relied(const weighing::Repair& repair) {
  if (!repair.reliable) return "not known";
  return *repair.reliable ? "yes" : "no";
}

bool renews(survey::RepairKind kind) {
  return kind == survey::RepairKind::let_in || kind == survey::RepairKind::new_panel;
}

std::string on_sheet(const weighing::Zone& zone) {
  return zone.number == 0 ? "" : fmt::format("zone-{:02}", zone.number);
}

// Parts whose metal is new where a repair let it in, and parts seen without any repair.
void write_origin(Flow& flow, const weighing::Result& result) {
  std::string renewed;
  std::vector<int> covered, as_found;
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* entry = entry_of(result, zone.number, zone.own);
    bool is_new = false, other = false;
    if (entry)
      for (const survey::Repair& repair : entry->repairs)
        (renews(repair.kind) ? is_new : other) = true;
    if (is_new) renewed += (renewed.empty() ? "" : "; ") + weighing::title(zone);
    if (zone.number == 0 || !zone.fitted) continue;
    if (other && !is_new) covered.push_back(zone.number);
    if (!is_new && !other && zone.seen_share > 0) as_found.push_back(zone.number);
  }
  flow.heading("Original and renewed metal");
  flow.paragraph(renewed.empty() ? "Renewed in part or whole: none that anybody noted."
                                 : fmt::format("Renewed in part or whole: {}.", renewed));
  if (!covered.empty())
    flow.paragraph(
        fmt::format("Mended over the metal that was there: {}.", scene::number_list(covered)));
  if (!as_found.empty())
    flow.paragraph(
        fmt::format("Seen, and no repair noted: {}. That is not to say that it is the "
                    "metal it left the works with: good repairs don't show.",
                    scene::number_list(as_found)));
}

}  // namespace

void write_mendings(Flow& flow, const weighing::Result& result, const photos::Album& album) {
  flow.section("Repairs found", "repairs");
  std::vector<Row> rows;
  Photos photos;
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* entry = entry_of(result, zone.number, zone.own);
    for (std::size_t i = 0; i < zone.repairs.size(); ++i) {
      const weighing::Repair& repair = zone.repairs[i];
      const survey::Repair& noted = entry->repairs.at(i);
      photos.insert(photos.end(), noted.photos.begin(), noted.photos.end());
      rows.push_back({{weighing::title(zone), repair.text, relied(repair), repair.why, noted.note},
                      on_sheet(zone),
                      "",
                      repair.reliable == false});
    }
  }
  if (rows.empty()) flow.paragraph("No repair was noted. Good repairs don't show.");
  flow.table(
      {{"part", 1.6}, {"repair", 2.2}, {"to be relied on", 0.9}, {"why", 2.2}, {"note", 1.4}},
      rows);
  for (const Photos& row : grouped(photos, 3))
    flow.block(strip_height_mm(row, album, flow.width_mm()) + 2,
               [&](scene::Page& page, const scene::Area& area) {
                 draw_strip(page, area, row, album, flow.measure());
               });
  write_origin(flow, result);
}

}  // namespace tinworm::documents
