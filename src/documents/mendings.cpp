#include "documents/mendings.hpp"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/parts.hpp"
#include "documents/photo_strip.hpp"
#include "scene/naming.hpp"
#include "weighing/repair.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::documents {
namespace {

std::string relied(const weighing::Repair& repair) {
  if (!repair.reliable) return "not known";
  return *repair.reliable ? "yes" : "no";
}

bool is_repair_of_metal(const survey::Repair& repair) {
  return repair.kind != survey::RepairKind::treated;
}

// New metal stands where the old was cut out; everything else lies over it.
bool renews(const survey::Repair& repair) {
  return repair.kind == survey::RepairKind::let_in ||
         repair.kind == survey::RepairKind::new_panel ||
         (is_repair_of_metal(repair) && repair.beneath == survey::Beneath::cut_out);
}

// Whether it stands among the findings, photos and all.
bool is_finding(const weighing::Zone& zone, std::size_t index) {
  return std::ranges::any_of(zone.spots, [&](const weighing::Spot& spot) {
    return spot.is_repair && spot.rank > 0 && spot.index == static_cast<int>(index);
  });
}

std::string listed(const std::vector<std::string>& parts) {
  return fmt::format("{}", fmt::join(parts, "; "));
}

// Parts whose metal is new where a repair let it in, and parts seen without any repair.
void write_origin(Flow& flow, const weighing::Result& result) {
  std::vector<std::string> renewed, covered;
  std::vector<int> as_found;
  for (const weighing::Zone& zone : result.zones) {
    std::vector<survey::Repair> repairs;
    if (const survey::Zone* entry = result.survey.zone(zone.number, zone.own))
      std::ranges::copy_if(entry->repairs, std::back_inserter(repairs), is_repair_of_metal);
    if (std::ranges::any_of(repairs, renews))
      renewed.push_back(weighing::title(zone));
    else if (!repairs.empty())
      covered.push_back(weighing::title(zone));
    else if (zone.number != 0 && zone.seen_share > 0)
      as_found.push_back(zone.number);
  }
  flow.heading("Original and renewed metal");
  flow.paragraph(renewed.empty() ? "Renewed in part or whole: none that anybody noted."
                                 : fmt::format("Renewed in part or whole: {}.", listed(renewed)));
  if (!covered.empty())
    flow.paragraph(fmt::format("Mended over the metal that was there: {}.", listed(covered)));
  if (!as_found.empty())
    flow.paragraph(
        fmt::format("Seen, and no repair noted: {}. That is not to say that it is the "
                    "metal it left the works with: good repairs don't show.",
                    scene::number_list(as_found)));
}

void write_repair_photos(Flow& flow, const weighing::Result& result, const photos::Album& album) {
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* entry = result.survey.zone(zone.number, zone.own);
    for (std::size_t i = 0; entry && i < entry->repairs.size(); ++i) {
      const Photos& photos = entry->repairs[i].photos;
      if (photos.empty() || is_finding(zone, i)) continue;
      flow.heading(fmt::format("{}: {}", scene::capitalised(weighing::title(zone)),
                               word(entry->repairs[i].kind)));
      write_photos(flow, photos, album);
    }
  }
}

// Rust on a part that was mended: nobody recorded whether it is the same metal.
std::string worn_beside(const weighing::Zone& zone) {
  for (const weighing::Spot& spot : zone.spots)
    if (spot.rank > 0 && !spot.is_repair && spot.step >= weighing::Step::pitted)
      return fmt::format(
          "place {} is on the same part, and whether it is the same metal isn't "
          "recorded",
          spot.rank);
  return "";
}

std::string why_words(const weighing::Zone& zone, const weighing::Repair& repair,
                      const survey::Repair& noted) {
  std::vector<std::string> words{repair.why, worn_beside(zone), noted.note};
  std::erase(words, "");
  return fmt::format("{}", fmt::join(words, "; "));
}

}  // namespace

void write_mendings(Flow& flow, const weighing::Result& result, const photos::Album& album,
                    quantity::Units units) {
  flow.section("Repairs found", "repairs");
  std::vector<Row> rows;
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* entry = result.survey.zone(zone.number, zone.own);
    for (std::size_t i = 0; i < zone.repairs.size(); ++i) {
      const weighing::Repair& repair = zone.repairs[i];
      const survey::Repair& noted = entry->repairs.at(i);
      rows.push_back({{weighing::title(zone), weighing::text_of(noted, units), relied(repair),
                       why_words(zone, repair, noted)},
                      on_sheet(zone.number),
                      "",
                      repair.reliable == false});
    }
  }
  if (rows.empty()) flow.paragraph("No repair was noted. Good repairs don't show.");
  flow.table(
      {{"part", 1.6}, {"repair", 2.2}, {"to be relied on", 0.9}, {"why, and what was noted", 3.6}},
      rows);
  write_repair_photos(flow, result, album);
  write_origin(flow, result);
}

}  // namespace tinworm::documents
